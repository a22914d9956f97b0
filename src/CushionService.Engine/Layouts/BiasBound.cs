using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Nesting;

namespace CushionService.Engine.Layouts;

/// <summary>What is proven of a fabric of which bias strips are cut: their squares or blocks are one way of many to cut them, so that a
/// bound of those pieces bounds nothing; the strips themselves have an area that none can do without.</summary>
internal static class BiasBound
{
    /// <summary>The layout with what holds however its bias strips are cut.</summary>
    /// <param name="layout">A layout; one without bias strips stays as it is.</param>
    public static FabricLayout Of(FabricLayout layout)
    {
        CutPiece[] bias =
        [
            .. layout.Placements.Select(laid => laid.Piece).Where(IsBias).Distinct(ReferenceEqualityComparer.Instance).Cast<CutPiece>(),
        ];
        if (bias.Length == 0)
        {
            return layout;
        }

        LaidPiece[] others = [.. layout.Placements.Where(laid => !IsBias(laid.Piece))];
        Int128 area =
            others.Aggregate((Int128)0, (sum, laid) => sum + laid.Piece.Area.SquareNanometres) + bias.Aggregate((Int128)0, Strips);
        Int128 width = layout.Fabric.UsableWidth.Nanometres;
        Length filled = Length.FromNanometres((long)((area + width - 1) / width)),
            longest = others.Aggregate(Length.Zero, (most, laid) => Length.Max(most, Shortest(laid.Piece))),
            bound = Length.Max(filled, longest);
        if (bound >= layout.LowerBound)
        {
            return layout;
        }

        bool proven = layout.ProvenMinimal && Steps(layout, bound) == Steps(layout, layout.Length);
        return layout with
        {
            LowerBound = bound,
            FreeBound = Length.Min(layout.FreeBound, bound),
            ProvenMinimal = proven,
            Proof =
                !proven ? ProofKind.None
                : filled >= longest ? ProofKind.Area
                : ProofKind.LongestPiece,
            ProofFigures = proven ? layout.ProofFigures : "",
        };
    }

    private static bool IsBias(CutPiece piece) => piece.Welt is { Kind: WeltSupplyKind.ContinuousSquare or WeltSupplyKind.BiasStrips };

    // Finished strip, without what its joins and its end take.
    private static Int128 Strips(Int128 sum, CutPiece welt) =>
        sum + welt.Serves.Aggregate((Int128)0, (all, share) => all + Area.Of(share.Length, welt.Welt!.Strip).SquareNanometres);

    private static Length Shortest(CutPiece piece) =>
        piece.Rotations == Rotations.QuarterTurns ? Length.Min(piece.Across, piece.Along) : piece.Along;

    private static long Steps(FabricLayout layout, Length length) =>
        layout.Fabric.Sold.StepsFor(FabricSale.Needed(layout.Fabric, length, layout.Start));
}
