using System.Collections;
using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.RegularExpressions;
using CushionService.Contract;
using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>The rules that the attributes of one field state.</summary>
/// <typeparam name="T">The record that has the field.</typeparam>
internal abstract class FieldCheck<T>
{
    private FieldCheck(PropertyInfo property, string place)
    {
        Property = property;
        Name = place + property.Name;
        Words = FieldNames.Words(property.Name);
        IsRequired = property.IsDefined(typeof(RequiredAttribute));
    }

    private string Name { get; }

    private string Words { get; }

    /// <summary>The property that holds the field.</summary>
    public PropertyInfo Property { get; }

    /// <summary>Whether it may not be left out.</summary>
    public bool IsRequired { get; }

    /// <summary>The checks of a record's fields, those left out that any value passes.</summary>
    /// <param name="place">Where the record stands within the root, up to its fields' names.</param>
    public static FieldCheck<T>[] All(string place) =>
        [.. typeof(T).GetProperties().Select(property => Of(property, place)).OfType<FieldCheck<T>>()];

    /// <summary>Checks the field, which the record has or may not be without.</summary>
    public abstract void Run(T record, Findings findings);

    private static FieldCheck<T>? Of(PropertyInfo property, string place)
    {
        Type type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        return type == typeof(Measure) ? new LengthCheck(property, place)
            : type == typeof(string) ? new TextCheck(property, place)
            : type == typeof(int) || type == typeof(double) ? new NumberCheck(property, place)
            : type.IsEnum
                ? (FieldCheck<T>)Activator.CreateInstance(typeof(ChoiceCheck<>).MakeGenericType(typeof(T), type), property, place)!
            : typeof(ICollection).IsAssignableFrom(type) || property.IsDefined(typeof(NumberRangeAttribute))
                ? new ListCheck(property, place)
            : property.IsDefined(typeof(RequiredAttribute)) ? new PresenceCheck(property, place)
            : null;
    }

    private void Missing(Findings findings) => findings.Refuse(Name, "required", $"{Words} is required.");

    private sealed class PresenceCheck(PropertyInfo property, string place) : FieldCheck<T>(property, place)
    {
        private readonly Func<T, object?> _get = Getters.Of<T, object?>(property);

        public override void Run(T record, Findings findings)
        {
            if (_get(record) is null)
            {
                Missing(findings);
            }
        }
    }

    private sealed class LengthCheck(PropertyInfo property, string place) : FieldCheck<T>(property, place)
    {
        private readonly Func<T, Measure?> _get = Getters.Of<T, Measure?>(property);
        private readonly (Length Minimum, Length Maximum)? _range = property.GetCustomAttribute<LengthRangeAttribute>() is { } range
            ? (Read(range.Minimum), Read(range.Maximum))
            : null;

        public override void Run(T record, Findings findings)
        {
            if (_get(record) is not { } measure)
            {
                Missing(findings);
                return;
            }

            OrderReading reading = findings.Reading;
            if (!measure.TryRead(reading.Unit, out Length length))
            {
                findings.Refuse(Name, "not-a-length", $"{Words} must be a length, such as 15.5, \"15 1/2\" or \"38.5 cm\".");
            }
            else if (_range is { } range && (length < range.Minimum || length > range.Maximum))
            {
                findings.RefuseRange(
                    Name,
                    "out-of-range",
                    $"{Words} must be between {reading.Text(range.Minimum)} and {reading.Text(range.Maximum)}.",
                    range.Minimum,
                    range.Maximum
                );
            }
        }

        private static Length Read(string text) =>
            LengthText.TryParse(text, LengthUnit.Inch, out Length length)
                ? length
                : throw new InvalidOperationException($"{text} is not a length.");
    }

    private sealed class TextCheck(PropertyInfo property, string place) : FieldCheck<T>(property, place)
    {
        private readonly Func<T, string?> _get = Getters.Of<T, string?>(property);
        private readonly int? _longest = property.GetCustomAttribute<MaxLengthAttribute>()?.Length;
        private readonly string? _pattern = property.GetCustomAttribute<RegularExpressionAttribute>()?.Pattern;
        private readonly Regex? _form = property.GetCustomAttribute<RegularExpressionAttribute>() is { } form
            ? TextPattern.Of(form.Pattern)
            : null;

        public override void Run(T record, Findings findings)
        {
            if (_get(record) is not { } text)
            {
                Missing(findings);
            }
            else if (text.Length > _longest)
            {
                findings.Refuse(Name, "too-long", $"{Words} may have at most {_longest} characters.", new FindingRange(null, _longest));
            }
            else if (_form is not null && !_form.IsMatch(text))
            {
                findings.Refuse(Name, "bad-form", $"{Words} must match {_pattern}.");
            }
        }
    }

    private sealed class NumberCheck(PropertyInfo property, string place) : FieldCheck<T>(property, place)
    {
        private readonly Func<T, double?> _get = Getters.Of<T, double?>(property);
        private readonly NumberRangeAttribute? _range = property.GetCustomAttribute<NumberRangeAttribute>();

        public override void Run(T record, Findings findings)
        {
            if (_get(record) is not { } number)
            {
                Missing(findings);
            }
            else if (_range is { } range && !(number >= range.Minimum && number <= range.Maximum))
            {
                findings.Refuse(
                    Name,
                    "out-of-range",
                    FormattableString.Invariant($"{Words} must be between {range.Minimum} and {range.Maximum}."),
                    new FindingRange(range.Minimum, range.Maximum)
                );
            }
        }
    }

    private sealed class ListCheck(PropertyInfo property, string place) : FieldCheck<T>(property, place)
    {
        private readonly Func<T, object?> _get = Getters.Of<T, object?>(property);
        private readonly NumberRangeAttribute? _range = property.GetCustomAttribute<NumberRangeAttribute>();

        public override void Run(T record, Findings findings)
        {
            if (_get(record) is not { } list)
            {
                Missing(findings);
            }
            else if (_range is { } range && ((ICollection)list).Count is int count && (count < range.Minimum || count > range.Maximum))
            {
                findings.Refuse(
                    Name,
                    count > range.Maximum || range.Minimum > 1 ? "out-of-range" : "empty",
                    FormattableString.Invariant(
                        $"{Words} must have between {range.Minimum} and {range.Maximum} entries; it has {count} {(count == 1 ? "entry" : "entries")}."
                    ),
                    new FindingRange(range.Minimum, range.Maximum)
                );
            }
        }
    }

    private sealed class ChoiceCheck<TChoice>(PropertyInfo property, string place) : FieldCheck<T>(property, place)
        where TChoice : struct, Enum
    {
        private readonly Func<T, TChoice?> _get = Getters.Of<T, TChoice?>(property);

        public override void Run(T record, Findings findings)
        {
            if (_get(record) is not { } choice)
            {
                Missing(findings);
            }
            else if (!Enum.IsDefined(choice))
            {
                findings.Refuse(Name, "unknown-value", $"{Words} is not one of the values that it may take.");
            }
        }
    }
}
