using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Quoting;

/// <summary>Lays a fabric once more with straight welt, where the order leaves the cut open and straight welt would do.</summary>
/// <remarks>Straight crosswise strips do for straight sides in plain fabric; curves, stripes and checks need the bias (common practice, no
/// source).</remarks>
internal static class StraightWelt
{
    /// <summary>What would be bought; null where no welt of the fabric could be cut straight.</summary>
    /// <param name="drafting">The drafting.</param>
    /// <param name="fabric">The fabric.</param>
    /// <param name="search">How hard to search at most.</param>
    public static WeltSaving? Of(Drafting drafting, FabricSpecification fabric, SideSearch search)
    {
        OrderSpecification order = drafting.Order;
        if (fabric.Repeat is not null || fabric.OneWay || !order.Cushions.Any(WouldDo))
        {
            return null;
        }

        OrderSpecification straight = order with
        {
            Cushions = [.. order.Cushions.Select(cushion => WouldDo(cushion) ? Straight(cushion) : cushion)],
        };
        ImmutableArray<CutPiece> others = [.. drafting.Pieces.Where(piece => piece.Welt is null)];
        HashSet<string> fabrics = [.. others.Select(piece => piece.Fabric)];
        ImmutableArray<CutPiece> pieces =
        [
            .. others.Where(piece => piece.Fabric == fabric.Id),
            .. WeltPieces
                .Of(straight, drafting.Patterns, fabrics, Drafting.Sold)
                .Select(one => one.Piece)
                .Where(piece => piece.Fabric == fabric.Id),
        ];
        // A quick search: it says what the bias costs, and nobody cuts from it.
        int sharedBy = SearchCost.SharedBy(AnswerSteps.CostOf(pieces, fabric.Id, Effort.Quick), search.Most);
        var yardage = new Yardage(FabricNesting.LayOut(fabric, pieces, Effort.Quick, sharedBy, search.Cancellation));
        return new WeltSaving($"{order.Cushions.First(WouldDo).Pointer}/edging", yardage.Sold);

        bool WouldDo(CushionSpecification cushion) =>
            cushion.Trim.Edging is SeamStripSpecification { Cut: WeltCut.Bias, IsCutUsual: true }
            && cushion.Fabrics.Edging == fabric.Id
            && cushion.Outline.HasCorners;
    }

    // Crosswise, from selvedge to selvedge: the straight cut that the saving is stated for.
    private static CushionSpecification Straight(CushionSpecification cushion) =>
        cushion with
        {
            Trim = cushion.Trim with { Edging = ((SeamStripSpecification)cushion.Trim.Edging!) with { Cut = WeltCut.Crosswise } },
        };
}
