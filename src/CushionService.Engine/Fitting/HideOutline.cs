using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Fitting;

/// <summary>The outline of a hide or of a panel that is no rectangle, and where along it a box may lie.</summary>
/// <param name="corners">Corners of a simple polygon, counter-clockwise, whose box begins at zero.</param>
/// <remarks>A box lies within a simple polygon where its middle does and no side of the polygon runs through it (general geometry). Over a
/// band from y to y + h the sides take intervals of x; a box of width w keeps out of them widened by w to the left.</remarks>
internal sealed class HideOutline(ImmutableArray<Point> corners)
{
    // Three metres: the square of it is less than the largest of 64 bits.
    private const long Short = 3_000_000_000;

    /// <summary>Where the left edge of a box may be over a band, as intervals from the left.</summary>
    /// <param name="y">The lower edge of the band.</param>
    /// <param name="height">Its height, above zero.</param>
    /// <param name="width">Width of the box, above zero.</param>
    /// <param name="taken">Intervals of x that are taken in that band by what lies there.</param>
    public IEnumerable<(long From, long To)> Free(long y, long height, long width, IEnumerable<(long From, long To)> taken)
    {
        // Sides that run through the band, and what lies in it, in the order of their left ends.
        List<(long From, long To)> blocked = [.. Sides(y, y + height), .. taken];
        blocked.Sort();
        long from = 0;
        foreach ((long left, long right) in blocked)
        {
            if (left - width >= from && IsInside(from, left, y, height))
            {
                yield return (from, left - width);
            }

            from = Math.Max(from, right);
        }
    }

    /// <summary>The longest box of a height that lies within.</summary>
    /// <param name="height">Its height.</param>
    /// <param name="rows">How many bands are tried.</param>
    public Length Widest(Length height, int rows)
    {
        long top = corners.Max(corner => corner.Y.Nanometres) - height.Nanometres;
        long widest = 0;
        for (var row = 0; row <= rows && top >= 0; row++)
        {
            foreach ((long from, long to) in Free(top / rows * row, height.Nanometres, 1, []))
            {
                widest = Math.Max(widest, to + 1 - from);
            }
        }

        return Length.FromNanometres(widest);
    }

    // Between two sides of the band all points are inside, or none is.
    private bool IsInside(long left, long right, long y, long height)
    {
        (Int128 x, Int128 middle) = ((Int128)left + right, (2 * (Int128)y) + height);
        bool inside = false;
        for (var i = 0; i < corners.Length; i++)
        {
            (Point a, Point b) = (corners[i], corners[(i + 1) % corners.Length]);
            (Int128 ay, Int128 by) = (2 * (Int128)a.Y.Nanometres, 2 * (Int128)b.Y.Nanometres);
            if (ay > middle != by > middle)
            {
                // The side crosses the level of the middle: to the right of the point, or not. Cross-multiplied, so that it is exact.
                (Int128 ax, Int128 bx) = (2 * (Int128)a.X.Nanometres, 2 * (Int128)b.X.Nanometres);
                bool crosses =
                    by > ay ? (bx - ax) * (middle - ay) > (x - ax) * (by - ay) : (bx - ax) * (middle - ay) < (x - ax) * (by - ay);
                inside ^= crosses;
            }
        }

        return inside;
    }

    // What the sides take of the open band, outwards to a nanometre. A side along an edge of the band does not run through it.
    private IEnumerable<(long From, long To)> Sides(long bottom, long top)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            (Point a, Point b) = (corners[i], corners[(i + 1) % corners.Length]);
            (Point low, Point high) = a.Y <= b.Y ? (a, b) : (b, a);
            if (high.Y.Nanometres <= bottom || low.Y.Nanometres >= top)
            {
                continue;
            }

            (long from, long fromUp) = At(low, high, Math.Max(bottom, low.Y.Nanometres));
            (long to, long toUp) = At(low, high, Math.Min(top, high.Y.Nanometres));
            yield return (Math.Min(from, to), Math.Max(fromUp, toUp));
        }
    }

    // Where a side is at a level, down and up to a nanometre; a level side lies within the band, and is all of it.
    private static (long Down, long Up) At(Point low, Point high, long y)
    {
        Int128 rise = high.Y.Nanometres - low.Y.Nanometres;
        if (rise == 0)
        {
            return (Math.Min(low.X.Nanometres, high.X.Nanometres), Math.Max(low.X.Nanometres, high.X.Nanometres));
        }

        // Of a hide of three metres the product fits 64 bits, which are divided many times faster.
        (long across, long up) = (high.X.Nanometres - low.X.Nanometres, y - low.Y.Nanometres);
        if (Math.Abs(across) <= Short && up <= Short)
        {
            (long whole, long rest) = Math.DivRem(across * up, (long)rise);
            return (low.X.Nanometres + whole - (rest < 0 ? 1 : 0), low.X.Nanometres + whole + (rest > 0 ? 1 : 0));
        }

        Int128 run = (Int128)across * up;
        Int128 down = (run / rise) - (run % rise < 0 ? 1 : 0),
            upward = (run / rise) + (run % rise > 0 ? 1 : 0);
        return ((long)(low.X.Nanometres + down), (long)(low.X.Nanometres + upward));
    }
}
