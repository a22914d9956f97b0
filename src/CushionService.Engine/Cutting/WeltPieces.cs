using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;
using CushionService.Nesting;

namespace CushionService.Engine.Cutting;

/// <summary>The pieces that a welt is cut from: straight strips, a square for a continuous bias strip, or a slanted block of whole bias
/// strips.</summary>
internal static class WeltPieces
{
    /// <summary>The pieces of all welt of an order: one lay for all of one fabric, kind, size and cut, each with the place of its first
    /// cushion in the order.</summary>
    /// <param name="order">The order.</param>
    /// <param name="patterns">The pattern of each cushion.</param>
    /// <param name="others">The ids of the fabrics that other pieces are cut from.</param>
    /// <param name="sold">The length of a fabric that is sold for a length along it.</param>
    public static IEnumerable<(int Cushion, CutPiece Piece)> Of(
        OrderSpecification order,
        IReadOnlyList<Pattern> patterns,
        IReadOnlySet<string> others,
        Func<FabricSpecification, Length, Length> sold
    )
    {
        var lays = Lays(order, patterns).ToArray();
        return lays.Select(lay =>
        {
            FabricSpecification fabric = order.Fabric(lay.Fabric);
            bool alone = !others.Contains(fabric.Id) && lays.Count(other => other.Fabric == fabric.Id) == 1;
            return (lay.Cushion, Of(lay.Needs, fabric, order.Workroom.CuttingStep, alone ? along => sold(fabric, along) : null));
        });
    }

    private static IEnumerable<(int Cushion, string Fabric, ImmutableArray<WeltNeed> Needs)> Lays(
        OrderSpecification order,
        IReadOnlyList<Pattern> patterns
    ) =>
        order
            .Cushions.Select((cushion, i) => (Index: i, Need: WeltNeed.Of(cushion, patterns[i], order.Workroom.CuttingStep)))
            .Where(one => one.Need is not null)
            // Strips that differ in nothing are cut as one lay: the spare end is then needed once, and not for each
            // cushion.
            .GroupBy(one =>
                (
                    one.Need!.Cushion.Fabrics.Edging,
                    one.Need.Strip.Kind,
                    one.Need.Strip.Size,
                    one.Need.Strip.Cut,
                    one.Need.StripWidth,
                    one.Need.Cushion.SeamAllowance
                )
            )
            .Select(group => (group.First().Index, group.Key.Edging, ImmutableArray.CreateRange(group.Select(one => one.Need!))));

    // A strip is never used to its last inch: a slanted end as long as it is wide is spare (common practice, no source).
    private static CutPiece Of(ImmutableArray<WeltNeed> needs, FabricSpecification fabric, Length step, Func<Length, Length>? sold)
    {
        WeltNeed need = needs[0];
        CushionSpecification cushion = need.Cushion;
        var finished = needs.Aggregate(Length.Zero, (sum, one) => sum + one.Total);
        Length total = finished + need.StripWidth;
        WeltSupply supply = StraightSupply.ForWelt(need, total, fabric.UsableWidth, step, sold);
        var panel = new Panel
        {
            Part = new PartName(need.Strip.Kind == EdgingKind.Welt ? PartKind.Welt : PartKind.FlatPiping),
            Role = FabricRole.Edging,
            Edges = supply.Kind == WeltSupplyKind.BiasStrips ? Slanted(supply) : Rectangle(supply),
            Marks = Marks(supply),
            Because = WeltTexts.Pieces(
                needs.Length == 1 ? [need.Because] : needs.Select(one => WeltTexts.OfCushion(one.Cushion.Name, one.Because)),
                needs.Length == 1 ? null : finished,
                need.StripWidth,
                total,
                need.Strip.Kind == EdgingKind.Welt
                    ? WeltTexts.WeltStrip(need.Strip.Size, cushion.SeamAllowance)
                    : WeltTexts.PipingStrip(need.Strip.Size, cushion.SeamAllowance),
                Because(supply)
            ),
        };
        return CutPiece.Of(panel, cushion, fabric, step) with
        {
            Quantity = supply.Pieces,
            Welt = supply,
            Serves = [.. needs.Select(one => new WeltShare(one.Cushion.Id, one.Cushion.Quantity, one.Total))],
            // Bias runs across both thread systems, whichever way it is turned; straight strips keep to the cut that was asked for.
            Rotations = need.Strip.Cut == WeltCut.Bias && !fabric.OneWay ? Rotations.QuarterTurns : fabric.Turns,
            IsRailroaded = false,
        };
    }

    private static Message Because(WeltSupply supply) =>
        supply.Kind switch
        {
            WeltSupplyKind.StraightStrips => WeltTexts.StraightStrips(supply.Pieces, supply.Supplied),
            WeltSupplyKind.BiasStrips => WeltTexts.BiasStrips(supply.Strips, supply.Supplied),
            _ => WeltTexts.ContinuousStrip(supply.Strips, supply.Pieces, supply.Supplied),
        };

    private static ImmutableArray<Edge> Rectangle(WeltSupply supply) =>
        PanelOutline.Rectangle(supply.Width, supply.Length, EdgeFinish.Raw, EdgeFinish.Raw, EdgeFinish.Raw, EdgeFinish.Raw);

    private static ImmutableArray<Edge> Slanted(WeltSupply supply)
    {
        // The block leans by 45°, so its slant rises by as much as the fabric is wide.
        Length along = supply.Length - supply.Width;
        Point lowLeft = default,
            lowRight = new(supply.Width, supply.Width),
            highRight = new(supply.Width, supply.Length),
            highLeft = new(Length.Zero, along);
        return
        [
            new Edge(EdgeName.Lower, lowLeft, lowRight, EdgeFinish.Raw),
            new Edge(EdgeName.Right, lowRight, highRight, EdgeFinish.Raw),
            new Edge(EdgeName.Upper, highRight, highLeft, EdgeFinish.Raw),
            new Edge(EdgeName.Left, highLeft, lowLeft, EdgeFinish.Raw),
        ];
    }

    // The first cut of a square parts it into two triangles; whole strips stand side by side.
    private static ImmutableArray<PanelMark> Marks(WeltSupply supply) =>
        supply.Kind switch
        {
            WeltSupplyKind.StraightStrips => [],
            WeltSupplyKind.ContinuousSquare =>
            [
                new PanelMark(MarkKind.CutLine, default, new Point(supply.Width, supply.Length), MarkPurpose.CutDiagonal),
            ],
            _ =>
            [
                .. Enumerable
                    .Range(1, supply.Strips - 1)
                    .Select(i => i * BiasSupply.Diagonal(supply.Strip))
                    .Select(at => new PanelMark(
                        MarkKind.CutLine,
                        new Point(Length.Zero, at),
                        new Point(supply.Width, supply.Width + at),
                        MarkPurpose.CutStripsApart
                    )),
            ],
        };
}
