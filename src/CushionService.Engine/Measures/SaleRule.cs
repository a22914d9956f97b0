namespace CushionService.Engine.Measures;

/// <summary>How something is sold by length. Steps and minimums are exact fractions of the unit: three thirds of a metre are 1 m.</summary>
/// <param name="Unit">Yards or metres.</param>
/// <param name="Step">The step that the shop cuts by, above zero, to the nearest nanometre.</param>
/// <param name="Minimum">The least that is sold, to the nearest nanometre; rounded up to whole steps.</param>
public sealed record SaleRule(SaleUnit Unit, Length Step, Length Minimum)
{
    // Rules and price books show halves, thirds, sevenths, tenths, sixty-fourths: all within this.
    private const int LargestDenominator = 100;

    /// <summary>The step that the shop cuts by, to the nearest nanometre.</summary>
    public Length Step { get; } = Step;

    /// <summary>The step as a fraction of the unit: the simplest that is the same to the nearest nanometre.</summary>
    public Fraction StepInUnits { get; } = Simplest(Step, LengthOf(Unit));

    /// <summary>How many steps the minimum is, at least 1.</summary>
    public long LeastSteps => Math.Max(1, StepsOf(Simplest(Minimum, LengthUnit), StepInUnits));

    /// <summary>The unit as a unit of length.</summary>
    public LengthUnit LengthUnit => LengthOf(Unit);

    /// <summary>The shortest length that can be bought, up to a nanometre.</summary>
    public Length Least => LengthOfSteps(LeastSteps);

    /// <summary>The fewest steps that can be bought and are no shorter than <paramref name="needed"/>.</summary>
    public long StepsFor(Length needed) =>
        Math.Max(LeastSteps, StepsOf(Fraction.Of(needed.Nanometres, Length.NanometresIn(LengthUnit)), StepInUnits));

    /// <summary>The shortest length that can be bought and is no shorter than <paramref name="needed"/>, up to a nanometre.</summary>
    public Length Sell(Length needed) => LengthOfSteps(StepsFor(needed));

    /// <summary>A number of steps in the unit, exact.</summary>
    public Fraction Units(long steps) => Fraction.Of(steps * StepInUnits.Numerator, StepInUnits.Denominator);

    /// <summary>A number of steps with the unit, as measures show it: "1 1/8 yd", "1/3 m", "0.7 m".</summary>
    public string Text(long steps) => Amount(steps).ToString();

    /// <summary>A number of steps as an amount in the unit, exact.</summary>
    public SaleAmount Amount(long steps) => new(Units(steps), Unit);

    private static LengthUnit LengthOf(SaleUnit unit) => unit == SaleUnit.Yd ? LengthUnit.Yard : LengthUnit.Metre;

    private Length LengthOfSteps(long steps) => Length.FromNanometres(Units(steps).CeilingOf(Length.NanometresIn(LengthUnit)));

    // The smallest whole number of steps that is no less.
    private static long StepsOf(Fraction amount, Fraction step) =>
        Fraction.Of(amount.Numerator * step.Denominator, amount.Denominator * step.Numerator).CeilingOf(1);

    // "1/3" of a unit was read to the nearest nanometre; what no small denominator gives is taken as it is.
    private static Fraction Simplest(Length length, LengthUnit unit)
    {
        Int128 whole = Length.NanometresIn(unit);
        for (Int128 denominator = 1; denominator <= LargestDenominator; denominator++)
        {
            Int128 numerator = ((2 * length.Nanometres * denominator) + whole) / (2 * whole);
            if (((2 * numerator * whole) + denominator) / (2 * denominator) == length.Nanometres)
            {
                return Fraction.Of(numerator, denominator);
            }
        }

        return Fraction.Of(length.Nanometres, whole);
    }
}
