using CushionService.Nesting.Outlines.NoFit;
using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Outlines.Bounding;

/// <summary>A rectangle within each piece: where the outlines lie, these lie too, so what bounds the rectangles bounds the outlines.
/// A rectangle is its own; a convex outline has its bounding box, shrunk towards its middle until the corners lie within.</summary>
internal static class InnerRectangles
{
    /// <summary>Shares of the bounding box are counted in parts of this.</summary>
    private const long Whole = 1 << 20;

    /// <summary>Null when no piece has one.</summary>
    /// <param name="problem">The problem, checked.</param>
    public static RectangleSet? Of(StripProblem problem)
    {
        var inner = problem.Pieces.Select(Within).OfType<NestingPiece>().ToList();
        return inner.Count > 0 ? new RectangleSet([.. inner], problem.Width) : null;
    }

    /// <summary>The rectangle of one piece; null for an outline that is not convex, or too
    /// thin.</summary>
    private static NestingPiece? Within(NestingPiece piece)
    {
        if (piece.Outline.IsDefaultOrEmpty)
        {
            return piece;
        }

        var shape = OutlineShape.Of(piece, 0);
        if (!shape.IsConvex)
        {
            return null;
        }

        // What is shrunk more lies within what is shrunk less, so that halving finds the greatest
        // share.
        var (fits, fails) = (0L, Whole);
        while (fails - fits > 1)
        {
            var middle = (fits + fails) / 2;
            (fits, fails) = Holds(shape, piece.Width, piece.Length, middle) ? (middle, fails) : (fits, middle);
        }

        var (width, length) = ((long)((Int128)piece.Width * fits / Whole), (long)((Int128)piece.Length * fits / Whole));
        return width > 0 && length > 0 ? piece with { Width = width, Length = length, Outline = [] } : null;
    }

    /// <summary>Whether the box of the share lies within a convex shape, in whole numbers 2 × Whole times as large.</summary>
    /// <param name="shape">The convex outline.</param>
    /// <param name="width">Extent of its bounding box across, grid units.</param>
    /// <param name="length">Extent of its bounding box along.</param>
    /// <param name="share">Parts of <see cref="Whole"/> that are left of the box.</param>
    private static bool Holds(OutlineShape shape, long width, long length, long share)
    {
        for (var edge = 0; edge < shape.Corners.Length; edge++)
        {
            var (a, b) = (shape.Corners[edge], shape.Corners[(edge + 1) % shape.Corners.Length]);
            foreach (var (signX, signY) in (ReadOnlySpan<(int, int)>)[(-1, -1), (1, -1), (1, 1), (-1, 1)])
            {
                var (x, y) = ((Int128)width * (Whole + signX * share), (Int128)length * (Whole + signY * share));
                if ((b.X - a.X) * (y - 2 * Whole * (Int128)a.Y) < (b.Y - a.Y) * (x - 2 * Whole * (Int128)a.X))
                {
                    return false;
                }
            }
        }

        return true;
    }
}
