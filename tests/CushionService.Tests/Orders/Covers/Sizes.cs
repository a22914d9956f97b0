using System.Text.Json.Nodes;

namespace CushionService.Tests.Orders.Covers;

/// <summary>Sizes as a maker writes them in the units of an order: eighths of an inch, half centimetres, whole millimetres, now and then
/// as text. Every choice follows from the number.</summary>
internal sealed class Sizes
{
    private readonly Random _random;
    private readonly double _inch;
    private readonly double _step;

    public Sizes(int number)
    {
        _random = new Random(number);
        Units = Pick("in", "cm", "mm");
        (_inch, _step) = Units switch
        {
            "in" => (1, 0.125),
            "cm" => (2.54, 0.5),
            _ => (25.4, 1),
        };
    }

    /// <summary>The units of the order.</summary>
    public string Units { get; }

    public int Whole(int from, int to) => _random.Next(from, to + 1);

    public bool Chance(int percent) => _random.Next(100) < percent;

    public T Pick<T>(params ReadOnlySpan<T> choices) => choices[_random.Next(choices.Length)];

    /// <summary>A size between two of inches, in the order's units.</summary>
    public double Between(double from, double to) =>
        Math.Max(_step, Math.Round((from + (_random.NextDouble() * (to - from))) * _inch / _step) * _step);

    /// <summary>A size that is given in inches, in the order's units, rounded as a maker would.</summary>
    public double Of(double inches) => Math.Round(inches * _inch / _step) * _step;

    /// <summary>A size between two of inches, as a number or as text with its unit.</summary>
    public JsonNode Length(double from, double to) => Written(Between(from, to));

    /// <summary>A size as a number, or now and then as text.</summary>
    public JsonNode Written(double size) => Chance(8) ? FormattableString.Invariant($"{size} {Units}") : (JsonNode)size;
}
