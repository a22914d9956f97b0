using System.Text.Json.Nodes;

namespace CushionService.Tests.Orders;

/// <summary>What chance decides in a generated order: the same throws for the same number.</summary>
internal sealed class Dice
{
    private readonly Random _random;
    private readonly bool _careless;

    /// <summary>Throws for one order; the first of them gives its units.</summary>
    /// <param name="number">The order's number, the seed.</param>
    /// <param name="careless">Whether <see cref="Slip"/> is ever true.</param>
    public Dice(int number, bool careless)
    {
        _random = new Random(number);
        Units = Pick("in", "in", "cm", "mm");
        _careless = careless;
    }

    /// <summary>The unit of the order's bare numbers.</summary>
    public string Units { get; }

    /// <summary>Whether the caller makes a mistake here: one throw in twenty, and never in a sound order, which throws no die
    /// for it.</summary>
    public bool Slip() => _careless && Next(20) == 0;

    public bool Chance(int oneIn) => Next(oneIn) == 0;

    public string Pick(params string[] choices) => choices[Next(choices.Length)];

    /// <summary>A whole number from 0 up to, but without, the limit.</summary>
    public int Next(int limit) => _random.Next(limit);

    /// <summary>A whole number from the first up to, but without, the second.</summary>
    public int Next(int from, int limit) => _random.Next(from, limit);

    /// <summary>A length between two of inches, in the order's units or in text of its own.</summary>
    public JsonNode Length(double from, double to)
    {
        double inches = Slip() ? 5000 : Inches(from, to);
        double number = Units switch
        {
            "in" => inches,
            "cm" => Math.Round(inches * 2.54, 1),
            _ => Math.Round(inches * 25.4),
        };
        return Next(6) switch
        {
            0 => FormattableString.Invariant($"{number} {Units}"),
            1 => FormattableString.Invariant($"{Math.Round(inches * 2.54, 1)} cm"),
            2 when Slip() => "about a foot",
            _ => number,
        };
    }

    /// <summary>Inches between two, in eighths.</summary>
    public double Inches(double from, double to) => Math.Round((from + _random.NextDouble() * (to - from)) * 8) / 8;

    /// <summary>The same object without the members that have no value, also in the objects within, as most callers write it.</summary>
    public static JsonObject Some(JsonObject members)
    {
        foreach (string empty in members.Where(member => member.Value is null).Select(member => member.Key).ToArray())
        {
            members.Remove(empty);
        }

        foreach (JsonObject inner in members.Select(member => member.Value).OfType<JsonObject>())
        {
            Some(inner);
        }

        return members;
    }
}
