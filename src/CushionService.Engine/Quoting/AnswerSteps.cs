using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Materials;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Quoting;

/// <summary>Divides the steps of an effort among all that is laid for one answer, before anything is laid: more layouts have fewer steps
/// each, and take no more time.</summary>
/// <remarks>An order whose layouts together take less than the effort allows has all of them searched as if each were alone.</remarks>
public sealed class AnswerSteps
{
    // Beside what one largest search takes, one part in this many is kept for what is laid beside the fabric.
    private const int ForSides = 8;

    // And one part in this many for deciding an open grain: with less, the way that sells longer is taken too often.
    private const int GrainPart = 3;

    // A roll is laid twice where pieces can be butted either way, and foam as boxes and as outlines.
    private const int LaysOfStock = 2;

    private readonly Effort _effort;
    private readonly long _beside;

    /// <summary>Divides the steps of a quote.</summary>
    /// <param name="drafting">A drafting without violations.</param>
    /// <param name="sharedBy">How many quotes make the answer, at least 1.</param>
    public AnswerSteps(Drafting drafting, int sharedBy = 1)
    {
        ArgumentNullException.ThrowIfNull(drafting);
        OrderSpecification order = drafting.Order;
        _effort = order.Effort;
        long all = Math.Max(1, SearchCost.Most(_effort) / sharedBy),
            cost = 0;
        var used = 0;
        foreach (FabricSpecification fabric in order.Fabrics)
        {
            long one = CostOf(drafting.Pieces, fabric.Id, _effort);
            used += one > 0 ? 1 : 0;
            cost += one;
        }

        used = Math.Max(1, used);
        cost /= used;
        Fabric = used * SearchCost.SharedBy(cost, all);
        _beside = Math.Max(1, (Math.Max(0, all - cost) + (all / ForSides)) / (used + (LaysOfStock * LaidStocks.Count(order))));
    }

    /// <summary>By how many searches the steps of each fabric's layout are shared.</summary>
    public int Fabric { get; }

    /// <summary>How hard each of the things is searched that are laid beside the fabrics.</summary>
    /// <param name="cancellation">Cancels the search.</param>
    public SideSearch Beside(CancellationToken cancellation) => new(_effort, _beside, cancellation);

    /// <summary>What the search of a fabric's layout costs at most, alone.</summary>
    /// <param name="pieces">The pieces of all fabrics.</param>
    /// <param name="fabric">The id of the fabric; one without pieces costs nothing.</param>
    /// <param name="effort">How hard to search.</param>
    public static long CostOf(ImmutableArray<CutPiece> pieces, string fabric, Effort effort)
    {
        (int copies, bool outlines) = (0, false);
        foreach (CutPiece piece in pieces)
        {
            if (piece.Fabric == fabric)
            {
                copies += piece.Quantity;
                outlines |= !piece.Outline.IsEmpty;
            }
        }

        return SearchCost.Of(effort, copies, outlines);
    }

    /// <summary>What the layouts that decide an open grain may cost together, beside all others.</summary>
    /// <param name="order">The order.</param>
    /// <param name="sharedBy">How many quotes make the answer, at least 1.</param>
    internal static long ForGrain(OrderSpecification order, int sharedBy) =>
        Math.Max(1, SearchCost.Most(order.Effort) / sharedBy / GrainPart);
}
