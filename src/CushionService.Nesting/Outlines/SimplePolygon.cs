namespace CushionService.Nesting.Outlines;

/// <summary>Whether corners make a simple polygon: no two edges meet but neighbours at their common corner. Each pair of edges is looked at
/// once; outlines have at most some hundreds of corners.</summary>
public static class SimplePolygon
{
    /// <summary>Whether the polygon neither crosses nor touches itself, and has three corners at least.</summary>
    /// <param name="corners">Within 2^30 of the origin, so that products stay within 64 bits.</param>
    public static bool Is(ReadOnlySpan<GridPoint> corners)
    {
        for (var edge = 0; edge < corners.Length; edge++)
        {
            var (a, b) = (corners[edge], corners[(edge + 1) % corners.Length]);
            for (var other = edge + 1; other < corners.Length; other++)
            {
                var (c, d) = (corners[other], corners[(other + 1) % corners.Length]);
                var neighbours = other == edge + 1 || (edge == 0 && other == corners.Length - 1);
                if (a == b || (neighbours ? TurnsBack(a, b, c, d) : Meet(a, b, c, d)))
                {
                    return false;
                }
            }
        }

        return corners.Length >= 3;
    }

    /// <summary>Whether two edges that share an end lie on top of each other.</summary>
    /// <param name="a">Where the first edge begins.</param>
    /// <param name="b">Where it ends.</param>
    /// <param name="c">Where the second begins.</param>
    /// <param name="d">Where it ends.</param>
    private static bool TurnsBack(GridPoint a, GridPoint b, GridPoint c, GridPoint d)
    {
        var (shared, one, other) = b == c ? (b, a, d) : (a, b, c);
        return Side(one, shared, other) == 0 && !Within(one, other, shared);
    }

    /// <summary>Whether two edges share a point: they cross, or an end of one lies on the other.</summary>
    private static bool Meet(GridPoint a, GridPoint b, GridPoint c, GridPoint d)
    {
        var (forC, forD, forA, forB) = (Side(a, b, c), Side(a, b, d), Side(c, d, a), Side(c, d, b));
        return (forC != forD && forA != forB && forC * forD <= 0 && forA * forB <= 0)
            || (forC == 0 && Within(a, b, c))
            || (forD == 0 && Within(a, b, d))
            || (forA == 0 && Within(c, d, a));
    }

    /// <summary>Whether a point lies in the box of two others.</summary>
    private static bool Within(GridPoint a, GridPoint b, GridPoint point) =>
        Math.Min(a.X, b.X) <= point.X && point.X <= Math.Max(a.X, b.X) && Math.Min(a.Y, b.Y) <= point.Y && point.Y <= Math.Max(a.Y, b.Y);

    /// <summary>1 when c lies left of a → b, −1 right of it, 0 on its line.</summary>
    private static int Side(GridPoint a, GridPoint b, GridPoint c) => ((b.X - a.X) * (c.Y - a.Y)).CompareTo((b.Y - a.Y) * (c.X - a.X));
}
