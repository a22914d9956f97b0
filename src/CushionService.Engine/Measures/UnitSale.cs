namespace CushionService.Engine.Measures;

/// <summary>How an item other than fabric is sold: in whole steps of its unit, and no less than a minimum.</summary>
/// <param name="Unit">The unit of sale.</param>
/// <param name="Step">The step, in the unit, above 0, exact: three thirds of a metre are 1 m.</param>
/// <param name="Minimum">The least that is sold, in the unit; rounded up to whole steps.</param>
public sealed record UnitSale(SaleUnit Unit, Fraction Step, Fraction Minimum)
{
    /// <summary>The least that can be bought and is no less than <paramref name="needed"/>, both in the unit.</summary>
    public Fraction Sell(Fraction needed)
    {
        Int128 steps = ((needed < Minimum ? Minimum : needed) / Step).Ceiling();
        return Fraction.Of(Int128.Max(steps, 1), 1) * Step;
    }

    /// <summary>The usual steps: an eighth of a yard and a tenth of a metre, which measures show (NIST Handbook 44, section 5.52), a
    /// hundredth of a weight or an area, and one by one (common practice, no source).</summary>
    public static UnitSale Usual(SaleUnit unit) => new(unit, UsualStep(unit), 0);

    /// <summary>The usual step of a unit, in the unit.</summary>
    public static Fraction UsualStep(SaleUnit unit) =>
        unit switch
        {
            SaleUnit.Yd => 0.125m,
            SaleUnit.M => 0.1m,
            SaleUnit.Each => 1,
            _ => 0.01m,
        };
}
