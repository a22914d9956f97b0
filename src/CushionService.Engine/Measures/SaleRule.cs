namespace CushionService.Engine.Measures;

/// <summary>How a fabric is sold, by length or by weight. Steps and minimums are exact fractions of the unit: three thirds of a metre are
/// 1 m.</summary>
public sealed record SaleRule
{
    // Rules and price books show halves, thirds, sevenths, tenths, sixty-fourths: all within this.
    private const int LargestDenominator = 100;

    // In yards or metres.
    private const int LeastRoll = 5;

    private readonly Fraction _minimum;
    private readonly Fraction _nanometres;

    /// <summary>A sale by length.</summary>
    /// <param name="unit">Yards or metres.</param>
    /// <param name="step">The step that the shop cuts by, above zero, to the nearest nanometre.</param>
    /// <param name="minimum">The least that is sold, to the nearest nanometre; rounded up to whole steps.</param>
    public SaleRule(SaleUnit unit, Length step, Length minimum)
    {
        Int128 whole = Length.NanometresIn(LengthOf(unit));
        (Unit, StepInUnits, _minimum, _nanometres) = (unit, Simplest(step, whole), Simplest(minimum, whole), Fraction.Of(whole, 1));
    }

    private SaleRule(SaleUnit unit, Fraction step, Fraction minimum, FabricWeight weight) =>
        (Unit, StepInUnits, _minimum, _nanometres, Weight) = (unit, step, minimum, weight.NanometresIn(unit), weight);

    /// <summary>The unit of sale.</summary>
    public SaleUnit Unit { get; }

    /// <summary>The step that the shop cuts by, as a fraction of the unit.</summary>
    public Fraction StepInUnits { get; }

    /// <summary>What the fabric weighs, where it is sold by weight.</summary>
    public FabricWeight? Weight { get; }

    /// <summary>The length of a step, up to a nanometre.</summary>
    public Length Step => LengthOfSteps(1);

    /// <summary>Whether it is sold by the roll: nobody cuts fabric to steps of 5 yd or 5 m, so such a step is what one roll holds (common
    /// practice, no source).</summary>
    public bool IsByTheRoll => Weight is null && Step >= Length.From(LeastRoll, LengthUnit);

    /// <summary>The length of a step in nanometres, exact.</summary>
    public Fraction NanometresInStep =>
        Fraction.Of(StepInUnits.Numerator * _nanometres.Numerator, StepInUnits.Denominator * _nanometres.Denominator);

    /// <summary>A sale by weight: a length is cut and weighed.</summary>
    /// <param name="unit">Pounds or kilograms.</param>
    /// <param name="step">The step that the scales show, above zero.</param>
    /// <param name="minimum">The least that is sold; rounded up to whole steps.</param>
    /// <param name="weight">What the fabric weighs.</param>
    public static SaleRule ByWeight(SaleUnit unit, Fraction step, Fraction minimum, FabricWeight weight) =>
        new(unit, step, minimum, weight);

    /// <summary>How many steps the minimum is, at least 1.</summary>
    public long LeastSteps => Math.Max(1, StepsOf(_minimum, StepInUnits));

    /// <summary>The unit of length of the same system.</summary>
    public LengthUnit LengthUnit => LengthOf(Unit);

    /// <summary>The shortest length that can be bought, up to a nanometre.</summary>
    public Length Least => LengthOfSteps(LeastSteps);

    /// <summary>The fewest steps that can be bought and are no shorter than <paramref name="needed"/>.</summary>
    public long StepsFor(Length needed) =>
        Math.Max(LeastSteps, StepsOf(Fraction.Of(needed.Nanometres * _nanometres.Denominator, _nanometres.Numerator), StepInUnits));

    /// <summary>The shortest length that can be bought and is no shorter than <paramref name="needed"/>, up to a nanometre.</summary>
    public Length Sell(Length needed) => LengthOfSteps(StepsFor(needed));

    /// <summary>A number of steps in the unit, exact.</summary>
    public Fraction Units(long steps) => Fraction.Of(steps * StepInUnits.Numerator, StepInUnits.Denominator);

    /// <summary>A number of steps with the unit, as measures show it: "1 1/8 yd", "1/3 m", "0.7 m".</summary>
    public string Text(long steps) => Amount(steps).ToString();

    /// <summary>A number of steps as an amount in the unit, exact.</summary>
    public SaleAmount Amount(long steps) => new(Units(steps), Unit);

    private static LengthUnit LengthOf(SaleUnit unit) => unit is SaleUnit.Yd or SaleUnit.Lb ? LengthUnit.Yard : LengthUnit.Metre;

    private Length LengthOfSteps(long steps)
    {
        Fraction step = NanometresInStep;
        return Length.FromNanometres(Fraction.Of(steps * step.Numerator, step.Denominator).CeilingOf(1));
    }

    // The smallest whole number of steps that is no less.
    private static long StepsOf(Fraction amount, Fraction step) =>
        Fraction.Of(amount.Numerator * step.Denominator, amount.Denominator * step.Numerator).CeilingOf(1);

    // "1/3" of a unit was read to the nearest nanometre; what no small denominator gives is taken as it is.
    private static Fraction Simplest(Length length, Int128 whole)
    {
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
