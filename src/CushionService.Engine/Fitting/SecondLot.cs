using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Fitting;

/// <summary>What is bought of another dye lot where the fabric on hand is not enough, so that what is seen of one cushion is of one
/// lot.</summary>
/// <param name="OnHand">A layout of each offcut, with what is cut from what is on hand.</param>
/// <param name="Bought">What is bought, as it is sold.</param>
/// <param name="Pieces">The pieces that are cut from it, with how many copies of each.</param>
/// <param name="Kept">The cushions that are cut whole from what is on hand, with how many of each.</param>
/// <param name="Moved">The cushions that are cut whole from the other lot, with how many of each.</param>
public sealed record SecondLot(
    ImmutableArray<OffcutLayout> OnHand,
    FabricShortfall Bought,
    ImmutableArray<CutPiece> Pieces,
    ImmutableArray<CushionCount> Kept,
    ImmutableArray<CushionCount> Moved
)
{
    /// <summary>What is cut from which lot, in one line.</summary>
    public Message Because => FitTexts.SecondLot(Said(Kept), Said(Moved), Bought.Yardage.SoldAmount, Bought.Fabric.Name);

    /// <summary>Plans the other lot.</summary>
    /// <param name="fabric">A fabric with offcuts onto which its pieces do not fit.</param>
    /// <param name="pieces">Its pieces.</param>
    /// <param name="rows">Cushions that stand beside each other: a row is of one lot.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="sharedBy">How many searches share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <returns>Null where no cushion is seen in that fabric, where it comes in hides, or where a piece is wider than the fabric.</returns>
    public static SecondLot? Of(
        FabricSpecification fabric,
        ImmutableArray<CutPiece> pieces,
        ImmutableArray<RowSpecification> rows,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        ImmutableArray<CutPiece> seen = [.. pieces.Where(OneLotSearch.IsSeen)];
        if (seen.IsEmpty || fabric.OnHand.Any(offcut => !offcut.Outline.IsEmpty))
        {
            return null;
        }

        OneLotSearch search = new(OffcutRoom.Of(fabric, pieces), pieces, sharedBy, cancellation) { Rows = rows };
        (ImmutableArray<OffcutLayout> onHand, ImmutableArray<CutPiece> left) = search.Most(effort);
        if (FabricShortfall.Of(fabric, left, effort, sharedBy, cancellation) is not { } bought)
        {
            return null;
        }

        var (kept, moved) = (ImmutableArray.CreateBuilder<CushionCount>(), ImmutableArray.CreateBuilder<CushionCount>());
        foreach (var cushion in seen.GroupBy(piece => piece.Cushion!.Id))
        {
            CutPiece first = cushion.First();
            int each = first.Quantity / first.Cushion!.Quantity,
                copies = (left.FirstOrDefault(piece => piece.Id == first.Id)?.Quantity ?? 0) / each;
            Count(kept, first.Cushion.Quantity - copies);
            Count(moved, copies);

            void Count(ImmutableArray<CushionCount>.Builder counts, int count)
            {
                if (count > 0)
                {
                    counts.Add(new CushionCount(first.Cushion, count));
                }
            }
        }

        return new SecondLot(onHand, bought, left, kept.ToImmutable(), moved.ToImmutable());
    }

    private static IEnumerable<Message> Said(ImmutableArray<CushionCount> counts) =>
        counts.Select(count => FitTexts.Cushions(count.Quantity, count.Cushion.Name));
}
