using System.Text.Json.Serialization;

namespace CushionService.Client;

/// <summary>An amount in the unit of a sale: a number, or a fraction such as <c>1/8</c>.</summary>
[JsonConverter(typeof(QuantityConverter))]
public readonly record struct Quantity
{
    private Quantity(decimal number, string? text) => (Number, Text) = (number, text);

    /// <summary>The number; zero where the amount is a fraction.</summary>
    public decimal Number { get; }

    /// <summary>The fraction; null where the amount is a number.</summary>
    public string? Text { get; }

    /// <summary>A number.</summary>
    public static implicit operator Quantity(decimal number) => new(number, null);

    /// <summary>A number.</summary>
    public static implicit operator Quantity(double number) => new((decimal)number, null);

    /// <summary>A fraction.</summary>
    public static implicit operator Quantity(string text) => new(0, text);
}
