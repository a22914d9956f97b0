using System.Globalization;
using System.Text.Json.Serialization;

namespace CushionService.Client;

/// <summary>A length of an order: a number in the order's units, or one with a unit of its own.</summary>
[JsonConverter(typeof(LengthConverter))]
public readonly record struct Length
{
    private Length(decimal number, string? text) => (Number, Text) = (number, text);

    /// <summary>The number, in the order's units; zero where the length is a text.</summary>
    public decimal Number { get; }

    /// <summary>The text, such as <c>15 1/2 in</c>; null where the length is a number.</summary>
    public string? Text { get; }

    /// <summary>A length in inches, whatever the units of the order.</summary>
    public static Length Inches(decimal number) => In(number, "in");

    /// <summary>A length in centimetres.</summary>
    public static Length Centimetres(decimal number) => In(number, "cm");

    /// <summary>A length in millimetres.</summary>
    public static Length Millimetres(decimal number) => In(number, "mm");

    /// <summary>A length in yards.</summary>
    public static Length Yards(decimal number) => In(number, "yd");

    /// <summary>A length in metres.</summary>
    public static Length Metres(decimal number) => In(number, "m");

    /// <summary>A length as people write it, with a fraction or a unit of its own: <c>15 1/2</c>, <c>38.5 cm</c>.</summary>
    public static Length Of(string text) => new(0, text);

    /// <summary>A number in the order's units.</summary>
    public static implicit operator Length(decimal number) => new(number, null);

    /// <summary>A number in the order's units.</summary>
    public static implicit operator Length(double number) => new((decimal)number, null);

    /// <summary>A number in the order's units.</summary>
    public static implicit operator Length(int number) => new(number, null);

    /// <summary>A length as people write it.</summary>
    public static implicit operator Length(string text) => Of(text);

    /// <inheritdoc />
    public override string ToString() => Text ?? Number.ToString(CultureInfo.InvariantCulture);

    private static Length In(decimal number, string unit) => Of($"{number.ToString(CultureInfo.InvariantCulture)} {unit}");
}
