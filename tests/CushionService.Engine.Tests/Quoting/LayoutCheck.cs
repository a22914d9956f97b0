using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>What a cutter would check of a layout with a tape measure; it shares no code with the search or its audit.</summary>
internal static class LayoutCheck
{
    public static void Passes(FabricLayout layout, Drafting drafting)
    {
        CutPiece[] demanded = [.. drafting.Pieces.Where(piece => piece.Fabric == layout.Fabric.Id)];
        foreach (CutPiece piece in demanded)
        {
            Assert.Equal(
                Enumerable.Range(1, piece.Quantity),
                layout.Placements.Where(laid => laid.Piece.Id == piece.Id).Select(laid => laid.Copy).Order()
            );
        }

        Assert.Equal(demanded.Sum(piece => piece.Quantity), layout.Placements.Length);
        foreach (LaidPiece laid in layout.Placements)
        {
            LiesOnTheFabric(laid, layout);
            TurnsAsAllowed(laid, layout.Fabric);
            MatchesTheRepeat(laid, layout);
        }

        NothingOverlaps(layout);
        // On a grid of micrometres the length is rounded up.
        Assert.InRange((layout.Length - layout.Placements.Max(laid => laid.Y + laid.Length)).Nanometres, 0, 999);
        Assert.InRange(layout.Used, 0, 1);
    }

    private static void LiesOnTheFabric(LaidPiece laid, FabricLayout layout)
    {
        bool turned = laid.Turn is 90 or 270;
        Assert.Equal(turned ? (laid.Piece.Length, laid.Piece.Width) : (laid.Piece.Width, laid.Piece.Length), (laid.Width, laid.Length));
        Assert.True(
            laid.X >= Length.Zero && laid.Y >= Length.Zero && laid.X + laid.Width <= layout.Fabric.UsableWidth,
            $"{laid.Piece.Id} lies beyond the fabric."
        );
    }

    private static void TurnsAsAllowed(LaidPiece laid, FabricSpecification fabric)
    {
        int[] allowed = laid.Piece.Rotations switch
        {
            Rotations.None => [0],
            Rotations.HalfTurn => [0, 180],
            _ => [0, 90, 180, 270],
        };
        int grain = laid.Piece.IsRailroaded ? 90 : 0;
        Assert.Contains((laid.Turn + 360 - grain) % 360, allowed);
        bool mayTurn = !fabric.OneWay || laid.Turn == grain || laid.Piece.Panel?.Role == FabricRole.InnerCover;
        Assert.True(mayTurn, $"{laid.Piece.Id} is turned on one-way fabric.");
    }

    // The matching point lies on a motif: one is where the layout says, and every repeat from there.
    private static void MatchesTheRepeat(LaidPiece laid, FabricLayout layout)
    {
        if (!laid.IsMatched)
        {
            return;
        }

        // On a grid of micrometres each repeat from the fabric's edges on is rounded, and what begins the first.
        RepeatSpecification repeat = layout.Fabric.LaidRepeat!;
        long Repeats(Length to, Length? of) => of is { } length ? to.Nanometres / length.Nanometres : 0;
        long columns = Repeats(layout.Fabric.UsableWidth, repeat.Width),
            rows = Repeats(layout.Length, repeat.Length);
        long rounding = 1000 * (columns + rows + 4);
        Assert.Equal(laid.Piece.IsRailroaded ? 90 : 0, laid.Turn);
        Point drawn = laid.Piece.Panel!.Match!.Value.Moved(laid.Piece.Origin.X, laid.Piece.Origin.Y);
        Point motif = laid.Turn == 90 ? new Point(laid.X + laid.Piece.Length - drawn.Y, laid.Y + drawn.X) : drawn.Moved(laid.X, laid.Y);
        long across = (motif.X - layout.MotifX!.Value).Nanometres,
            phase = 0;
        if (repeat.Width is { } width)
        {
            long column = (long)Math.Round((double)across / width.Nanometres);
            Assert.InRange(Math.Abs(across - (column * width.Nanometres)), 0, rounding);
            phase = repeat.Drop == DropKind.Half && column % 2 != 0 ? repeat.Length!.Value.Nanometres / 2 : 0;
        }

        if (repeat.Length is { } length)
        {
            long along = (motif.Y - layout.MotifStart).Nanometres - phase,
                row = (long)Math.Round((double)along / length.Nanometres);
            Assert.InRange(Math.Abs(along - (row * length.Nanometres)), 0, rounding);
        }
    }

    private static void NothingOverlaps(FabricLayout layout)
    {
        for (var i = 0; i < layout.Placements.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                LaidPiece a = layout.Placements[i],
                    b = layout.Placements[j];
                bool apart = a.X + a.Width <= b.X || b.X + b.Width <= a.X || a.Y + a.Length <= b.Y || b.Y + b.Length <= a.Y;
                Assert.True(apart, $"{a.Piece.Id} {a.Copy} lies over {b.Piece.Id} {b.Copy}.");
            }
        }
    }
}
