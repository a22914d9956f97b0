using System.Collections.Immutable;
using CushionService.Engine.Fitting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;

namespace CushionService.Desk;

/// <summary>The fit of an order whose fabric on hand is what its yardage says to buy: one piece of the whole width, as long or longer. It
/// is cut as the yardage lays it, at the same effort.</summary>
internal static class FitAsBought
{
    /// <summary>The order cut as its yardage lays it.</summary>
    /// <param name="found">How it fits otherwise.</param>
    /// <param name="order">The order.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <returns>Null where all fits otherwise, where it is shown that these pieces cannot, or where what is on hand does not hold the
    /// yardage's layouts.</returns>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static Fit? Of(Fit found, CheckedOrder order, CancellationToken cancellation)
    {
        OrderSpecification specified = order.Drafting.Order;
        if (
            found.Verdict == FitVerdict.Fits
            || !specified.Fabrics.Where(fabric => !fabric.OnHand.IsEmpty).All(BoughtLayout.MayHold)
            || order.Intake.Specification is not { } sent
        )
        {
            return null;
        }

        // A fit spends little on an open grain, which it tries both ways; the yardage decides it.
        var drafting = Drafting.Of(sent, 1, cancellation);
        bool isShown = found.Verdict == FitVerdict.Impossible && FitWidths.HasSamePieces(drafting, found.Drafting);
        if (isShown || !drafting.Violations.IsEmpty)
        {
            return null;
        }

        ImmutableArray<Yardage> yardages = QuotePipeline.LayOut(drafting, cancellation);
        var cut = new Dictionary<string, OffcutFit>();
        foreach (FabricLayout layout in yardages.Select(yardage => yardage.Layout).Where(layout => !layout.Fabric.OnHand.IsEmpty))
        {
            if (BoughtLayout.On(layout.Fabric, layout) is not { } fit)
            {
                return null;
            }

            cut.Add(layout.Fabric.Id, fit);
        }

        return Fit.Of(specified, drafting, order.Intake.Warnings, (fabric, _, _) => cut[fabric.Id]) with
        {
            Trials = found.Trials,
        };
    }
}
