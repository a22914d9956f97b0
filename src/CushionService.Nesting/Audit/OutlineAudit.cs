using System.Collections.Immutable;
using CushionService.Nesting.Outlines.NoFit;

namespace CushionService.Nesting.Audit;

/// <summary>Checks a strip layout of outlines against its problem, exactly, on integers. It shares no code with the search.</summary>
internal static class OutlineAudit
{
    /// <summary>Returns when the layout keeps every invariant.</summary>
    /// <exception cref="LayoutAuditException">It does not; the message names the first that is broken.</exception>
    public static void Check(StripProblem problem, StripLayout layout)
    {
        var boxes = StripAudit.CheckPlaces(problem, layout);
        var outlines = layout.Placements.Select(placement => Placed(problem.Pieces[placement.Piece], placement)).ToList();
        foreach (var flaw in problem.Flaws.IsDefault ? [] : problem.Flaws)
        {
            outlines.Add(Rectangle(flaw.X, flaw.Y, flaw.Width, flaw.Length));
        }

        var overlap = new OutlineOverlap();
        for (var copy = 0; copy < boxes.Length; copy++)
        {
            for (var other = copy + 1; other < outlines.Count; other++)
            {
                if (overlap.InteriorsMeet(outlines[copy], outlines[other]))
                {
                    throw new LayoutAuditException(
                        other < boxes.Length
                            ? $"Two copies overlap: {layout.Placements[copy]} and {layout.Placements[other]}."
                            : $"A copy lies on a flaw: {layout.Placements[copy]} and {problem.Flaws[other - boxes.Length]}."
                    );
                }
            }
        }
    }

    /// <summary>The corners of a piece where it lies, read from the problem's own outline.</summary>
    public static GridPoint[] Placed(NestingPiece piece, Placement placement)
    {
        ImmutableArray<GridPoint> drawn = piece.Outline.IsDefaultOrEmpty ? [.. Rectangle(0, 0, piece.Width, piece.Length)] : piece.Outline;
        var placed = new GridPoint[drawn.Length];
        for (var corner = 0; corner < drawn.Length; corner++)
        {
            var (x, y) = drawn[corner];
            var (turnedX, turnedY) = placement.Turn switch
            {
                0 => (x, y),
                90 => (piece.Length - y, x),
                180 => (piece.Width - x, piece.Length - y),
                _ => (y, piece.Width - x),
            };
            placed[corner] = new GridPoint(placement.X + turnedX, placement.Y + turnedY);
        }

        return placed;
    }

    private static GridPoint[] Rectangle(long x, long y, long width, long length) =>
        [new(x, y), new(x + width, y), new(x + width, y + length), new(x, y + length)];
}
