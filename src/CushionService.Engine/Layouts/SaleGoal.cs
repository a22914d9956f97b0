using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Layouts;

/// <summary>What lengths of layout are as good as each other: those that are sold as the same, or those that fit on what one has.</summary>
/// <param name="Rung">The rung of a length; the lower the better.</param>
/// <param name="Ladder">The same for lengths on a grid.</param>
internal sealed record SaleGoal(Func<Length, long> Rung, Func<Grid, SaleLadder> Ladder)
{
    /// <summary>The lengths that are sold.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="start">What is bought to find the motif.</param>
    public static SaleGoal Sold(FabricSpecification fabric, Length start) =>
        new(length => fabric.Sold.StepsFor(FabricSale.Needed(fabric, length, start)), grid => FabricSale.Ladder(fabric, grid.Unit, start));

    /// <summary>A length that is given: any layout up to it will do.</summary>
    /// <param name="reach">How long the fabric on hand is.</param>
    public static SaleGoal Within(Length reach) =>
        new(length => length <= reach ? 0 : 1 + (length - reach).Nanometres, grid => new SaleLadder(grid.Down(reach), 1, 1, 1));
}
