using System.Globalization;
using System.Text.Json.Serialization;
using CushionService.Engine.Measures;

namespace CushionService.Contract;

/// <summary>A length as a caller writes it: a number in the order's units, or text that may hold a fraction and a unit
/// of its own (<c>"15 1/2"</c>, <c>"38.5 cm"</c>, <c>"1 1/4 yd"</c>).</summary>
/// <param name="Text">The number as written, or the text.</param>
/// <param name="IsNumber">Whether it was a number.</param>
[JsonConverter(typeof(MeasureConverter))]
public readonly record struct Measure(string Text, bool IsNumber)
{
    /// <summary>A number in the order's units.</summary>
    public static Measure Of(double number) =>
        new(
            // Most are whole, and whole numbers are written several times as fast.
            number is > 0 and < 1e9
            && number == (int)number
                ? ((int)number).ToString(CultureInfo.InvariantCulture)
                : number.ToString("R", CultureInfo.InvariantCulture),
            true
        );

    /// <summary>Text with or without a unit.</summary>
    public static Measure Of(string text) => new(text, false);

    /// <summary>Reads the length.</summary>
    /// <param name="unit">The unit of a number, and of text without a unit.</param>
    /// <param name="length">The length read.</param>
    /// <returns>False when the text is not a length, or is longer than <see cref="Length.MaxValue"/>.</returns>
    public bool TryRead(LengthUnit unit, out Length length) => LengthText.TryParse(Text, unit, out length);
}
