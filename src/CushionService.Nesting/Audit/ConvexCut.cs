namespace CushionService.Nesting.Audit;

/// <summary>Cuts a simple polygon into convex parts: a convex one is its own part, any other is cut into triangles, ear by ear
/// (Meisters, "Polygons have ears", 1975). The areas of the parts must add up to that of the polygon.</summary>
/// <remarks>The audit cuts outlines and parts them by lines; the search makes no-fit polygons. What is
/// wrong in one is hardly wrong in the other the same way.</remarks>
internal static class ConvexCut
{
    /// <param name="corners">Counter-clockwise, within 2^30 of the origin.</param>
    /// <exception cref="LayoutAuditException">The polygon cannot be cut: it is not simple, or runs clockwise.</exception>
    /// <summary>Cuts a polygon into convex parts that share no area and cover all of it.</summary>
    /// <returns>One part for a convex polygon; else triangles.</returns>
    public static ConvexPart[] Of(GridPoint[] corners)
    {
        var left = new List<GridPoint>(corners);
        var convex = true;
        for (var index = 0; index < corners.Length; index++)
        {
            convex &= Area(left[index], left[(index + 1) % left.Count], left[(index + 2) % left.Count]) >= 0;
        }

        if (convex)
        {
            return [new(corners)];
        }

        // Twice the polygon's area, as a fan of triangles from its first corner.
        Int128 area = 0;
        for (var index = 1; index + 1 < corners.Length; index++)
        {
            area += Area(corners[0], corners[index], corners[index + 1]);
        }

        var parts = new List<ConvexPart>();
        while (left.Count >= 3)
        {
            var ear = Ear(left);
            var (a, b, c) = Around(left, ear);
            var cut = Area(a, b, c);
            area -= cut;
            if (cut > 0)
            {
                parts.Add(new([a, b, c]));
            }

            left.RemoveAt(ear);
        }

        return area == 0 ? [.. parts] : throw new LayoutAuditException("The parts of an outline do not add up to its area.");
    }

    /// <summary>A corner that can be cut off: it turns left and no other corner lies in its triangle; or it lies on a straight
    /// edge.</summary>
    /// <param name="left">The corners that are left, counter-clockwise.</param>
    /// <returns>Index of the corner among those left.</returns>
    /// <exception cref="LayoutAuditException">There is no ear: the polygon is not simple.</exception>
    private static int Ear(List<GridPoint> left)
    {
        for (var ear = 0; ear < left.Count; ear++)
        {
            var (a, b, c) = Around(left, ear);
            var area = Area(a, b, c);
            if (area == 0 || (area > 0 && !HoldsAnother(left, a, b, c)))
            {
                return ear;
            }
        }

        throw new LayoutAuditException("An outline cannot be cut into triangles.");
    }

    /// <summary>Whether a corner other than these three lies in their triangle or on its edge: a cut
    /// along that edge could leave the polygon.</summary>
    private static bool HoldsAnother(List<GridPoint> left, GridPoint a, GridPoint b, GridPoint c)
    {
        foreach (var corner in left)
        {
            if (corner != a && corner != b && corner != c && Area(a, b, corner) >= 0 && Area(b, c, corner) >= 0 && Area(c, a, corner) >= 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A corner with the one before it and the one after it.</summary>
    private static (GridPoint Before, GridPoint Here, GridPoint After) Around(List<GridPoint> left, int index) =>
        (left[(index + left.Count - 1) % left.Count], left[index], left[(index + 1) % left.Count]);

    /// <summary>Twice the area of a triangle; above 0 when it runs counter-clockwise.</summary>
    /// <remarks>Corners lie within 2^30 of the origin, so that each product stays within
    /// 2^62.</remarks>
    private static long Area(GridPoint a, GridPoint b, GridPoint c) => (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);
}
