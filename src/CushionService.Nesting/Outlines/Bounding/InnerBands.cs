using System.Diagnostics;
using CushionService.Nesting.Outlines.NoFit;
using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Outlines.Bounding;

/// <summary>Rectangles within each piece that share no area, band by band: an outline is cut level with its corners, and each part between
/// two cuts holds a rectangle as high as the band. Where the outlines lie, these lie too, so what bounds the rectangles bounds the
/// outlines. A tee or an ell is the sum of its bands; a convex outline gets one, as long as itself.</summary>
internal static class InnerBands
{
    /// <summary>Null when no piece has one.</summary>
    /// <param name="problem">The problem, checked.</param>
    public static RectangleSet? Of(StripProblem problem)
    {
        var inner = problem.Pieces.SelectMany(Within).ToList();
        return inner.Count > 0 ? new RectangleSet([.. inner], problem.Width) : null;
    }

    /// <summary>The bands of one piece, as pieces of its quantity and turns; a rectangle is its own
    /// band.</summary>
    private static List<NestingPiece> Within(NestingPiece piece)
    {
        if (piece.Outline.IsDefaultOrEmpty)
        {
            return [piece];
        }

        var shape = OutlineShape.Of(piece, 0);
        long[] cuts = shape.IsConvex ? [0, shape.Length] : [.. shape.Corners.Select(corner => corner.Y).Distinct().Order()];
        var bands = new List<GridRectangle>();
        for (var cut = 0; cut + 1 < cuts.Length; cut++)
        {
            AddBand(shape.Corners, cuts[cut], cuts[cut + 1], bands);
        }

        return [.. bands.Select(band => piece with { Width = band.Width, Length = band.Length, Outline = [], Alignment = null })];
    }

    /// <summary>Adds the rectangles of one band; one that goes on as the last band's did is joined to it.</summary>
    /// <param name="corners">Corners of the outline, counter-clockwise.</param>
    /// <param name="from">The level of the lower cut, grid units.</param>
    /// <param name="to">The level of the upper cut.</param>
    /// <param name="bands">The bands found so far, those of the band below last.</param>
    private static void AddBand(GridPoint[] corners, long from, long to, List<GridRectangle> bands)
    {
        // Between the cuts the boundary is straight, or bulges: its extremes lie at the cuts.
        var (lower, upper) = (LevelCrossings.Of(corners, from, above: true), LevelCrossings.Of(corners, to, above: false));
        Debug.Assert(lower.Count == upper.Count && lower.Count % 2 == 0, "what enters a band leaves it");
        var fresh = bands.Count;
        for (var side = 0; side + 1 < lower.Count; side += 2)
        {
            var left = Math.Max(lower[side].Up, upper[side].Up);
            var right = Math.Min(lower[side + 1].Down, upper[side + 1].Down);
            // Between slanting edges there may be no room for a rectangle of the band's full height.
            if (left >= right)
            {
                continue;
            }

            var below = bands.FindIndex(0, fresh, band => band.X == left && band.X + band.Width == right && band.Y + band.Length == from);
            if (below >= 0)
            {
                bands[below] = bands[below] with { Length = to - bands[below].Y };
            }
            else
            {
                bands.Add(new(left, from, right - left, to - from));
            }
        }
    }
}
