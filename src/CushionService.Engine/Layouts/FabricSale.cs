using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Layouts;

/// <summary>From the length that pieces take to the length that is bought: shrinkage, then the start of the repeat, then squaring, then up
/// once to the sale step, and no less than the minimum.</summary>
/// <remarks>What is washed before cutting keeps 1 − p of its length, so need / (1 − p) is bought (general arithmetic). The bolt may begin
/// anywhere in a repeat whose motif is unknown along, so one repeat is added. The order is common practice, no source.</remarks>
public static class FabricSale
{
    private const int FinestScale = 1_000;

    /// <summary>The length that must be bought, before the sale step.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="layout">Length of the layout.</param>
    /// <param name="start">What is bought to find the motif (see <see cref="FabricLayout.Start"/>).</param>
    public static Length Needed(FabricSpecification fabric, Length layout, Length start) =>
        start
        + fabric.Squaring
        + (
            fabric.LengthShrinkage.Numerator == 0
                ? layout
                : Length.FromNanometres(FabricSpecification.Kept(fabric.LengthShrinkage).Inverse().CeilingOf(layout.Nanometres))
        );

    /// <summary>The length that is bought.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="layout">Length of the layout.</param>
    /// <param name="start">What is bought to find the motif.</param>
    public static Length Sold(FabricSpecification fabric, Length layout, Length start) => fabric.Sold.Sell(Needed(fabric, layout, start));

    /// <summary>The length along which pieces may lie on what was bought, down to a nanometre: <see cref="Needed"/> read
    /// backwards.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="bought">The length bought.</param>
    /// <param name="start">What is bought to find the motif.</param>
    public static Length Left(FabricSpecification fabric, Length bought, Length start) =>
        Length.FromNanometres(
            FabricSpecification.Kept(fabric.LengthShrinkage).FloorOf(Math.Max((bought - start - fabric.Squaring).Nanometres, 0))
        );

    /// <summary>The layout lengths at which the next saleable length begins.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="unit">Nanometres in a grid unit.</param>
    /// <param name="start">What is bought to find the motif.</param>
    internal static SaleLadder Ladder(FabricSpecification fabric, long unit, Length start)
    {
        Fraction kept = FabricSpecification.Kept(fabric.LengthShrinkage);
        // Steps of whole nanometres need no finer scale; a third of a metre is counted in thirds of a nanometre. A weight may need a scale
        // that no layout would show: its step is then up to a nanometre.
        Fraction nanometres = fabric.Sold.NanometresInStep;
        nanometres = nanometres.Denominator <= FinestScale ? nanometres : Fraction.Of(fabric.Sold.Step.Nanometres, 1);
        var scale = (long)nanometres.Denominator;
        var rung = (long)nanometres.Numerator;
        // Checked: with a fine scale and a long length these could outgrow 64 bits, and must not wrap unseen.
        return new SaleLadder(
            checked((fabric.Sold.LeastSteps * rung) - (scale * (start + fabric.Squaring).Nanometres)),
            rung,
            (long)kept.Numerator,
            checked((long)kept.Denominator * unit * scale)
        );
    }
}
