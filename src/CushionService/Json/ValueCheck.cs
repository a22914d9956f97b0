using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;

namespace CushionService.Json;

/// <summary>Compares a single JSON value with the type that the contract gives its member.</summary>
internal static class ValueCheck
{
    /// <summary>What is wrong with the form of a value; null when nothing is. Ranges are a matter of the rules, except
    /// of whole numbers that are too large to be read at all.</summary>
    /// <param name="value">The value, not null.</param>
    /// <param name="type">The type that the contract gives it.</param>
    /// <param name="pointer">Its place.</param>
    /// <param name="property">The member that holds it, for its range; null in a list.</param>
    public static Violation? ViolationOf(JsonElement value, Type type, string pointer, JsonPropertyInfo? property)
    {
        type = Nullable.GetUnderlyingType(type) ?? type;
        bool text = value.ValueKind == JsonValueKind.String;
        bool number = value.ValueKind == JsonValueKind.Number;
        if (text && JsonText.Of(value) is null)
        {
            return new Violation(pointer, "bad-encoding", JsonTexts.Surrogate);
        }

        if (type.IsEnum)
        {
            IReadOnlyList<string> words = WordsOf(type);
            return !text ? WrongType(value, pointer, JsonForm.Text)
                : words.Contains(JsonText.Of(value)!) ? null
                : new Violation(pointer, "unknown-value", JsonTexts.Choices(words));
        }

        return type == typeof(string) ? (text ? null : WrongType(value, pointer, JsonForm.Text))
            : type == typeof(bool)
                ? (value.ValueKind is JsonValueKind.True or JsonValueKind.False ? null : WrongType(value, pointer, JsonForm.TrueOrFalse))
            : type == typeof(Measure) ? (text || number ? null : WrongType(value, pointer, JsonForm.Length))
            : type == typeof(Quantity) ? (text || number ? null : WrongType(value, pointer, JsonForm.Quantity))
            : ContractJson.CoordinateOf(type) is not null ? NotAPair(pointer)
            : !number ? WrongType(value, pointer, JsonForm.Number)
            : NumberViolation(value, type, pointer, property);
    }

    /// <summary>Whether a value is a list of two, as a pair of coordinates is. What the coordinates are is another
    /// question.</summary>
    public static bool IsPair(JsonElement value) => value.ValueKind == JsonValueKind.Array && value.GetArrayLength() == 2;

    // Numbers of the contract are doubles and ints. What is out of the range of an int is out of the member's range
    // too, which the violation gives where the member has one.
    private static Violation? NumberViolation(JsonElement value, Type type, string pointer, JsonPropertyInfo? property)
    {
        if (!value.TryGetDouble(out double number) || !double.IsFinite(number))
        {
            return new Violation(pointer, "not-finite", JsonTexts.TooLarge);
        }

        if (type == typeof(double) || (type == typeof(int) && value.TryGetInt32(out _)))
        {
            return null;
        }

        // A member of a whole number: 2.0 and 2e0 are refused too, so that there is one way to write it.
        if (Math.Abs(number) <= int.MaxValue)
        {
            return new Violation(pointer, "wrong-type", JsonTexts.NotWhole);
        }

        NumberRangeAttribute? range = property
            ?.AttributeProvider?.GetCustomAttributes(typeof(NumberRangeAttribute), false)
            .OfType<NumberRangeAttribute>()
            .FirstOrDefault();
        Message detail = range is null ? JsonTexts.OutOfRange : JsonTexts.Range((decimal)range.Minimum, (decimal)range.Maximum);
        return new Violation(pointer, "out-of-range", detail, range?.Minimum, range?.Maximum);
    }

    /// <summary>The violation of a value of the wrong type: what was expected, and what was found.</summary>
    /// <param name="value">The value.</param>
    /// <param name="pointer">Its place; empty for the whole body, which is the order.</param>
    /// <param name="wanted">What the contract expects.</param>
    public static Violation WrongType(JsonElement value, string pointer, JsonForm wanted) =>
        new(pointer, "wrong-type", JsonTexts.WrongType(pointer.Length == 0, wanted, JsonText.FormOf(value)));

    // Said in one way, whether the value is no list or one of another length.
    private static Violation NotAPair(string pointer) => new(pointer, "wrong-type", JsonTexts.NotAPair);

    // By reflection, since the type is known at run time alone.
    private static IReadOnlyList<string> WordsOf(Type type) =>
        (IReadOnlyList<string>)typeof(Words<>).MakeGenericType(type).GetProperty(nameof(Words<DayOfWeek>.All))!.GetValue(null)!;
}
