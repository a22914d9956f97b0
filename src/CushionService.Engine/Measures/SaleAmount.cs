using System.Globalization;

namespace CushionService.Engine.Measures;

/// <summary>An amount in a unit of sale: 1 1/8 yd, 0.7 m, 2.25 kg, 3 of what is sold one by one.</summary>
/// <param name="Units">How many of the unit, exact.</param>
/// <param name="Unit">The unit.</param>
public readonly record struct SaleAmount(Fraction Units, SaleUnit Unit)
{
    // What a decimal may have at most; other fractions are shown as they are.
    private const int FinestDecimal = 10_000;

    /// <summary>An amount that is known as a decimal number.</summary>
    public static SaleAmount Of(decimal units, SaleUnit unit) => new(Fraction.Of(units), unit);

    /// <summary>The amount with the unit's symbol, as measures show it; what is sold one by one has none.</summary>
    public override string ToString() => Unit == SaleUnit.Each ? Number() : $"{Number()} {AmountText.Symbol(Unit)}";

    private string Number()
    {
        Int128 whole = Units.Numerator / Units.Denominator,
            rest = Units.Numerator % Units.Denominator;
        return rest == 0 ? whole.ToString(CultureInfo.InvariantCulture)
            : Unit != SaleUnit.Yd && FinestDecimal % Units.Denominator == 0
                ? ((decimal)Units.Numerator / (decimal)Units.Denominator).ToString("0.####", CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{(whole == 0 ? "" : $"{whole} ")}{rest}/{Units.Denominator}");
    }
}
