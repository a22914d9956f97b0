namespace CushionService.Nesting.Audit;

/// <summary>Reads placements back into convex parts.</summary>
internal static class PlacedOutlines
{
    /// <summary>Every copy where it lies, in the order of the placements, and after them the flaws.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="layout">The layout; its placements name pieces and allowed turns.</param>
    /// <param name="boxes">The bounding box of each placement.</param>
    /// <remarks>Each piece is cut once for each turn in which it lies.</remarks>
    public static PlacedParts[] Of(StripProblem problem, StripLayout layout, GridRectangle[] boxes)
    {
        var flaws = problem.Flaws.IsDefault ? [] : problem.Flaws;
        var cut = new Dictionary<(int Piece, int Turn), ConvexPart[]>();
        var placed = new PlacedParts[boxes.Length + flaws.Length];
        for (var index = 0; index < boxes.Length; index++)
        {
            var (piece, turn) = (layout.Placements[index].Piece, layout.Placements[index].Turn);
            if (!cut.TryGetValue((piece, turn), out var parts))
            {
                cut[(piece, turn)] = parts = ConvexCut.Of(Turned(problem.Pieces[piece], turn));
            }

            placed[index] = new(index, boxes[index], parts);
        }

        for (var flaw = 0; flaw < flaws.Length; flaw++)
        {
            var here = boxes.Length + flaw;
            placed[here] = new(here, flaws[flaw], ConvexCut.Of(Rectangle(flaws[flaw].Width, flaws[flaw].Length)));
        }

        return placed;
    }

    /// <summary>The corners of a piece turned counter-clockwise, its bounding box at the origin, read from the problem's own
    /// outline.</summary>
    /// <param name="piece">The piece as drawn.</param>
    /// <param name="turn">0, 90, 180 or 270 degrees.</param>
    /// <returns>Corners counter-clockwise, in grid units.</returns>
    private static GridPoint[] Turned(NestingPiece piece, int turn)
    {
        GridPoint[] drawn = piece.Outline.IsDefaultOrEmpty ? Rectangle(piece.Width, piece.Length) : [.. piece.Outline];
        return Array.ConvertAll(
            drawn,
            corner =>
                turn switch
                {
                    0 => corner,
                    90 => new GridPoint(piece.Length - corner.Y, corner.X),
                    180 => new GridPoint(piece.Width - corner.X, piece.Length - corner.Y),
                    _ => new GridPoint(corner.Y, piece.Width - corner.X),
                }
        );
    }

    /// <summary>A rectangle with its lower left corner at the origin.</summary>
    private static GridPoint[] Rectangle(long width, long length) => [new(0, 0), new(width, 0), new(width, length), new(0, length)];
}
