using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Nesting;
using CushionService.Nesting.Outlines;

namespace CushionService.Engine.Cutting;

/// <summary>Whether a piece can be cut along its outline: the cut line neither crosses nor touches itself.</summary>
internal static class CutOutline
{
    // Corners of cut outlines are whole micrometres.
    private const long Micrometre = 1000;

    /// <summary>Whether the outline is simple.</summary>
    /// <param name="corners">Counter-clockwise; empty for a rectangle, which always is.</param>
    public static bool IsSimple(ImmutableArray<Point> corners) =>
        corners.IsEmpty
        || IsConvex(corners)
        || SimplePolygon.Is([
            .. corners.Select(corner => new GridPoint(corner.X.Nanometres / Micrometre, corner.Y.Nanometres / Micrometre)),
        ]);

    // Most outlines are convex, which is quickly checked: no corner turns right, and the way round turns back to the left once.
    private static bool IsConvex(ImmutableArray<Point> corners)
    {
        var turns = 0;
        for (var i = 0; i < corners.Length; i++)
        {
            (Point one, Point at, Point next) = (corners[i], corners[(i + 1) % corners.Length], corners[(i + 2) % corners.Length]);
            (double dx, double dy) = ((at.X - one.X).Nanometres, (at.Y - one.Y).Nanometres);
            (double ex, double ey) = ((next.X - at.X).Nanometres, (next.Y - at.Y).Nanometres);
            if ((dx * ey) - (dy * ex) <= 0)
            {
                return false;
            }

            turns += dx < 0 != ex < 0 ? 1 : 0;
        }

        return turns == 2;
    }
}
