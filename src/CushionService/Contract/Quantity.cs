using System.Globalization;
using System.Text.Json.Serialization;
using CushionService.Engine.Measures;

namespace CushionService.Contract;

/// <summary>A quantity in a unit of sale as a caller writes it: a number, or text that may hold a fraction (<c>"1/3"</c>,
/// <c>"1 1/2"</c>).</summary>
/// <param name="Text">The number as written, or the text.</param>
/// <param name="IsNumber">Whether it was a number.</param>
[JsonConverter(typeof(QuantityConverter))]
public readonly record struct Quantity(string Text, bool IsNumber)
{
    /// <summary>A number.</summary>
    public static Quantity Of(double number) => new(number.ToString("R", CultureInfo.InvariantCulture), true);

    /// <summary>Text, with a fraction or without.</summary>
    public static Quantity Of(string text) => new(text, false);

    /// <summary>Reads the quantity.</summary>
    /// <param name="fraction">The exact quantity.</param>
    /// <returns>False when the text is no quantity.</returns>
    public bool TryRead(out Fraction fraction) => FractionText.TryParse(Text, out fraction);

    /// <summary>The quantity, which has passed its form.</summary>
    public Fraction Read() => TryRead(out Fraction fraction) ? fraction : throw new InvalidOperationException($"No quantity: {Text}.");
}
