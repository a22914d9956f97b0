using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>Says what welt that is cut on the bias costs, where straight welt would do.</summary>
public static class WeltNote
{
    /// <summary>The note; null where bias is asked for, is needed, or buys no more.</summary>
    /// <param name="yardage">The quantity.</param>
    public static Violation? Of(Yardage yardage)
    {
        ArgumentNullException.ThrowIfNull(yardage);
        if (yardage.StraightWelt is not { } straight || straight.Sold >= yardage.Sold)
        {
            return null;
        }

        FabricSpecification fabric = yardage.Layout.Fabric;
        long steps = fabric.Sold.StepsFor(straight.Sold),
            saved = fabric.Sold.StepsFor(yardage.Sold) - steps;
        return new Violation(
            straight.Pointer,
            "bias-costs-more",
            MatchTexts.BiasCostsMore(yardage.SoldAmount, fabric.Name, fabric.Sold.Amount(steps), fabric.Sold.Amount(saved))
        );
    }
}
