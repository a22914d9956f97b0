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
    private FieldCheck(PropertyInfo property)
    {
        Property = property;
        Name = property.Name;
        Phrase = FieldNames.Words(property.Name);
        IsRequired = property.IsDefined(typeof(RequiredAttribute));
    }

    private string Name { get; }

    private string Phrase { get; }

    /// <summary>The property that holds the field.</summary>
    public PropertyInfo Property { get; }

    /// <summary>Whether it may not be left out.</summary>
    public bool IsRequired { get; }

    /// <summary>Its place among the record's lengths; -1 for another field.</summary>
    public int Slot { get; set; } = -1;

    /// <summary>The checks of a record's fields, those left out that any value passes.</summary>
    public static FieldCheck<T>[] All() => [.. typeof(T).GetProperties().Select(Of).OfType<FieldCheck<T>>()];

    /// <summary>Checks the field, which the record has or may not be without, and keeps it if it is a length.</summary>
    /// <param name="record">The record.</param>
    /// <param name="start">Where the record's lengths are kept.</param>
    /// <param name="findings">Takes what is wrong.</param>
    /// <returns>Whether nothing is wrong.</returns>
    public abstract bool Passes(T record, int start, Findings findings);

    private static FieldCheck<T>? Of(PropertyInfo property)
    {
        Type type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        return type == typeof(Measure) ? new LengthCheck(property)
            : type == typeof(string) ? new TextCheck(property)
            : type == typeof(int) || type == typeof(double) ? new NumberCheck(property)
            : type.IsEnum ? (FieldCheck<T>)Activator.CreateInstance(typeof(ChoiceCheck<>).MakeGenericType(typeof(T), type), property)!
            : typeof(ICollection).IsAssignableFrom(type) || property.IsDefined(typeof(NumberRangeAttribute)) ? new ListCheck(property)
            : property.IsDefined(typeof(RequiredAttribute)) ? new PresenceCheck(property)
            : null;
    }

    /// <summary>What is wrong with a text that is no length.</summary>
    internal static string NotALength(string words) => $"{words} must be a length, such as 15.5, \"15 1/2\" or \"38.5 cm\".";

    private bool Missing(Findings findings) => Fails(findings, "required", $"{Phrase} is required.");

    private bool Fails(Findings findings, string code, string detail, FindingRange? range = null)
    {
        findings.Refuse(Name, code, detail, range);
        return false;
    }

    private sealed class PresenceCheck(PropertyInfo property) : FieldCheck<T>(property)
    {
        private readonly Func<T, object?> _get = Getters.Of<T, object?>(property);

        public override bool Passes(T record, int start, Findings findings) => _get(record) is not null || Missing(findings);
    }

    private sealed class LengthCheck(PropertyInfo property) : FieldCheck<T>(property)
    {
        private readonly Func<T, Measure?> _get = Getters.Of<T, Measure?>(property);
        private readonly LengthLimits? _limits = LengthLimits.Of(property);

        public override bool Passes(T record, int start, Findings findings)
        {
            if (_get(record) is not { } measure)
            {
                return Missing(findings);
            }

            // What is a length in millimetres may be too long to be read in yards.
            bool isRead = measure.TryRead(findings.Unit, out Length length);
            if (!isRead && (_limits is null || !measure.TryRead(LengthUnit.Millimetre, out _)))
            {
                return Fails(findings, "not-a-length", NotALength(Phrase));
            }

            if (_limits?.In(findings.Unit) is var (minimum, maximum) && (!isRead || length < minimum || length > maximum))
            {
                string detail = $"{Phrase} must be between {findings.Text(minimum)} and {findings.Text(maximum)}.";
                findings.RefuseRange(Name, "out-of-range", detail, minimum, maximum);
                return false;
            }

            findings.Lengths[start + Slot] = length;
            return true;
        }
    }

    private sealed class TextCheck(PropertyInfo property) : FieldCheck<T>(property)
    {
        private readonly Func<T, string?> _get = Getters.Of<T, string?>(property);
        private readonly int? _longest = property.GetCustomAttribute<MaxLengthAttribute>()?.Length;
        private readonly string? _pattern = property.GetCustomAttribute<RegularExpressionAttribute>()?.Pattern;
        private readonly Regex? _form = property.GetCustomAttribute<RegularExpressionAttribute>() is { } form
            ? TextPattern.Of(form.Pattern)
            : null;

        public override bool Passes(T record, int start, Findings findings) =>
            _get(record) is not { } text ? Missing(findings)
            : text.Length > _longest
                ? Fails(findings, "too-long", $"{Phrase} may have at most {_longest} characters.", new FindingRange(null, _longest))
            : _form?.IsMatch(text) != false || Fails(findings, "bad-form", $"{Phrase} must match {_pattern}.");
    }

    private sealed class NumberCheck(PropertyInfo property) : FieldCheck<T>(property)
    {
        private readonly Func<T, double?> _get = Getters.Of<T, double?>(property);
        private readonly NumberRangeAttribute? _range = property.GetCustomAttribute<NumberRangeAttribute>();

        public override bool Passes(T record, int start, Findings findings) =>
            _get(record) is not { } number
                ? Missing(findings)
                : _range is not { } range
                    || (number >= range.Minimum && number <= range.Maximum)
                    || Fails(
                        findings,
                        "out-of-range",
                        FormattableString.Invariant($"{Phrase} must be between {range.Minimum} and {range.Maximum}."),
                        new FindingRange(range.Minimum, range.Maximum)
                    );
    }

    private sealed class ListCheck(PropertyInfo property) : FieldCheck<T>(property)
    {
        private readonly Func<T, object?> _get = Getters.Of<T, object?>(property);
        private readonly NumberRangeAttribute? _range = property.GetCustomAttribute<NumberRangeAttribute>();

        public override bool Passes(T record, int start, Findings findings)
        {
            if (_get(record) is not { } list)
            {
                return Missing(findings);
            }

            if (_range is not { } range || ((ICollection)list).Count is var count && count >= range.Minimum && count <= range.Maximum)
            {
                return true;
            }

            string entries = count == 1 ? "entry" : "entries";
            return Fails(
                findings,
                count > range.Maximum || range.Minimum > 1 ? "out-of-range" : "empty",
                FormattableString.Invariant(
                    $"{Phrase} must have between {range.Minimum} and {range.Maximum} entries; it has {count} {entries}."
                ),
                new FindingRange(range.Minimum, range.Maximum)
            );
        }
    }

    private sealed class ChoiceCheck<TChoice>(PropertyInfo property) : FieldCheck<T>(property)
        where TChoice : struct, Enum
    {
        private readonly Func<T, TChoice?> _get = Getters.Of<T, TChoice?>(property);

        public override bool Passes(T record, int start, Findings findings) =>
            _get(record) is not { } choice
                ? Missing(findings)
                : Enum.IsDefined(choice)
                    || Fails(findings, "unknown-value", $"{Phrase} must be one of {string.Join(", ", Words<TChoice>.All)}.");
    }
}
