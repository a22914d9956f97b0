using System.Collections;
using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.RegularExpressions;
using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Specifying;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules that a contract record's attributes state: what is required, ranges of lengths and numbers, forms of text. The OpenAPI
/// document and the catalogue read the same attributes.</summary>
internal static class AttributeRules
{
    /// <summary>The rules of every property of <typeparamref name="T"/>.</summary>
    public static Action<T, ValidationContext<T>> Of<T>()
    {
        Check<T>[] checks = [.. typeof(T).GetProperties().Select(property => Check<T>.Of(property))];
        return (instance, context) =>
        {
            foreach (Check<T> check in checks)
            {
                check.Run(instance, context);
            }
        };
    }

    /// <summary>The attributes' rules of a part that has no others, where there is one.</summary>
    /// <param name="name">The property that holds it.</param>
    /// <param name="get">Gets it.</param>
    public static Action<T, ValidationContext<T>> Part<T, TPart>(string name, Func<T, TPart?> get)
        where TPart : class
    {
        Check<TPart>[] checks = [.. typeof(TPart).GetProperties().Select(property => Check<TPart>.Of(property, name + "."))];
        return (instance, context) =>
        {
            if (get(instance) is { } part)
            {
                foreach (Check<TPart> check in checks)
                {
                    check.Run(part, context);
                }
            }
        };
    }

    private sealed class Check<T>
    {
        private readonly string _name;
        private readonly string _words;
        private readonly Func<T, object?> _get;
        private readonly HashSet<object>? _choices;
        private readonly bool _required;
        private readonly NumberRangeAttribute? _numbers;
        private readonly int? _longest;
        private readonly Regex? _form;
        private readonly (Length Minimum, Length Maximum)? _lengths;

        private Check(PropertyInfo property, string place)
        {
            _name = place + property.Name;
            _words = FieldNames.Words(property.Name);
            _get = Getters.Of<T>(property);
            Type type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
            _choices = type.IsEnum ? [.. Enum.GetValuesAsUnderlyingType(type).Cast<object>().Select(value => Enum.ToObject(type, value))] : null;
            _required = property.IsDefined(typeof(RequiredAttribute));
            _numbers = property.GetCustomAttribute<NumberRangeAttribute>();
            _longest = property.GetCustomAttribute<MaxLengthAttribute>()?.Length;
            _form = property.GetCustomAttribute<RegularExpressionAttribute>() is { } form ? new Regex(form.Pattern, RegexOptions.NonBacktracking) : null;
            _lengths = property.GetCustomAttribute<LengthRangeAttribute>() is { } range ? (Read(range.Minimum), Read(range.Maximum)) : null;
        }

        public static Check<T> Of(PropertyInfo property, string place = "") => new(property, place);

        public void Run<TRoot>(T instance, ValidationContext<TRoot> context)
        {
            switch (_get(instance))
            {
                case null:
                    if (_required)
                    {
                        context.Refuse(_name, "required", $"{_words} is required.");
                    }

                    break;
                case Measure measure:
                    Run(measure, context);
                    break;
                case string text:
                    Run(text, context);
                    break;
                case ICollection list:
                    RunNumber(list.Count, context, list.Count == 1 ? "1 entry" : $"{list.Count} entries");
                    break;
                case int count:
                    RunNumber(count, context, null);
                    break;
                case double number:
                    RunNumber(number, context, null);
                    break;
                case Enum choice when !_choices!.Contains(choice):
                    context.Refuse(_name, "unknown-value", $"{_words} is not one of the values that it may take.");
                    break;
            }
        }

        private void Run<TRoot>(Measure measure, ValidationContext<TRoot> context)
        {
            OrderReading reading = context.Reading();
            if (!measure.TryRead(reading.Unit, out Length length))
            {
                context.Refuse(_name, "not-a-length", $"{_words} must be a length, such as 15.5, \"15 1/2\" or \"38.5 cm\".");
            }
            else if (_lengths is { } range && (length < range.Minimum || length > range.Maximum))
            {
                context.RefuseRange(_name, "out-of-range", $"{_words} must be between {reading.Text(range.Minimum)} and {reading.Text(range.Maximum)}.", range.Minimum, range.Maximum);
            }
        }

        private void Run<TRoot>(string text, ValidationContext<TRoot> context)
        {
            if (text.Length > _longest)
            {
                context.Refuse(_name, "too-long", $"{_words} may have at most {_longest} characters.", new FindingRange(null, _longest));
            }
            else if (_form is not null && !_form.IsMatch(text))
            {
                context.Refuse(_name, "bad-form", $"{_words} must match {_form}.");
            }
        }

        private void RunNumber<TRoot>(double number, ValidationContext<TRoot> context, string? entries)
        {
            if (_numbers is { } range && !(number >= range.Minimum && number <= range.Maximum))
            {
                string found = entries is null ? "" : $" entries; it has {entries}";
                context.Refuse(
                    _name,
                    entries is null || number > range.Maximum || range.Minimum > 1 ? "out-of-range" : "empty",
                    FormattableString.Invariant($"{_words} must {(entries is null ? "be" : "have")} between {range.Minimum} and {range.Maximum}{found}."),
                    new FindingRange(range.Minimum, range.Maximum));
            }
        }

        private static Length Read(string text) =>
            LengthText.TryParse(text, LengthUnit.Inch, out Length length) ? length : throw new InvalidOperationException($"{text} is not a length.");
    }
}
