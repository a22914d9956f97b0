namespace CushionService.Engine.Measures;

/// <summary>How something is sold by length.</summary>
/// <param name="Unit">Yards or metres.</param>
/// <param name="Step">The step that the shop cuts by, above zero.</param>
/// <param name="Minimum">The least that is sold; rounded up to whole steps.</param>
public sealed record SaleRule(SaleUnit Unit, Length Step, Length Minimum)
{
    /// <summary>The unit as a unit of length.</summary>
    public LengthUnit LengthUnit => Unit == SaleUnit.Yd ? LengthUnit.Yard : LengthUnit.Metre;

    /// <summary>The shortest length that can be bought.</summary>
    public Length Least => Length.Max(Minimum, Step).RoundUpTo(Step);

    /// <summary>The shortest length that can be bought and is no shorter than <paramref name="needed"/>.</summary>
    public Length Sell(Length needed) => Length.Max(needed.RoundUpTo(Step), Least);
}
