using System.Collections.Immutable;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Quoting;

/// <summary>What would help an order whose pieces are wider than their fabric: each change is drafted and laid, and named with what it
/// buys.</summary>
public static class WidthChanges
{
    // Least share of the steps that a layout takes.
    private const int Sharing = 8;

    /// <summary>The violations of a drafting, those of each fabric that is too narrow with the changes that would help.</summary>
    /// <param name="drafting">The drafting.</param>
    /// <param name="cancellation">Cancels the search.</param>
    public static ImmutableArray<Violation> Said(Drafting drafting, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(drafting);
        if (drafting.Violations.IsEmpty)
        {
            return [];
        }

        // The first fabric that is too narrow; what helps it is said with the first of its pieces, once.
        string? narrow = drafting.Pieces.FirstOrDefault(piece => !Layouts.FabricNesting.Fits(drafting.Fabric(piece), piece))?.Fabric;
        Message[] helped = narrow is null ? [] : [.. Helped(drafting.Order, drafting.Order.Fabric(narrow), cancellation)];
        Violation first = drafting.Violations[0];
        return helped.Length == 0
            ? drafting.Violations
            : drafting.Violations.SetItem(0, first with { Detail = DraftTexts.Helped(first.Detail, helped) });
    }

    private static IEnumerable<Message> Helped(OrderSpecification order, FabricSpecification fabric, CancellationToken cancellation)
    {
        ChangedOrder[] changes = [.. ChangedOrder.Of(order, fabric)];
        // Nothing else is laid for an order that is refused: the changes share its steps, so that what is said is near what is sold then.
        // They take few of them, since many an order is only tried.
        Effort effort = order.Effort == Effort.Quick ? Effort.Quick : Effort.Standard;
        int sharing = Math.Max(Sharing, changes.Length * order.Fabrics.Length) * (GrainChoice.IsNeeded(order) ? 2 : 1);
        foreach (ChangedOrder change in changes)
        {
            Drafting trial = Drafting.Decided(change.Order, ConstructionRegistry.All, []);
            if (!trial.Violations.IsEmpty)
            {
                continue;
            }

            FabricShortfall[] bought =
            [
                .. change
                    .Order.Fabrics.Select(one =>
                        FabricShortfall.Of(one, [.. trial.Pieces.Where(piece => piece.Fabric == one.Id)], effort, sharing, cancellation)
                    )
                    .OfType<FabricShortfall>(),
            ];
            yield return DraftTexts.ChangeTakes(change.Change, bought.Select(Taken));
        }
    }

    private static Message Taken(FabricShortfall bought) =>
        bought.Amount is { } amount
            ? DraftTexts.FabricTakenFor(bought.Yardage.SoldAmount, bought.Fabric.Name, amount, amount.Currency.Code)
            : DraftTexts.FabricTaken(bought.Yardage.SoldAmount, bought.Fabric.Name);
}
