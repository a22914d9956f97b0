namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>What can be said of the corners of a polygon one by one. All signs are of 128-bit products, so that they are exact for any grid
/// coordinates.</summary>
internal static class PolygonCorners
{
    /// <summary>1 when the way a, b, c turns left at b, −1 when right, 0 when it goes straight on or back.</summary>
    /// <returns>The sign of the cross product of the two ways.</returns>
    /// <param name="a">Where the way comes from.</param>
    /// <param name="b">The corner.</param>
    /// <param name="c">Where the way goes on to.</param>
    public static int Turn(GridPoint a, GridPoint b, GridPoint c) =>
        ((Int128)(b.X - a.X) * (c.Y - b.Y)).CompareTo((Int128)(b.Y - a.Y) * (c.X - b.X));

    /// <summary>Whether a counter-clockwise polygon is convex; corners on a straight edge are allowed.</summary>
    /// <param name="corners">Simple and counter-clockwise: a star that winds twice turns left at every corner,
    /// too.</param>
    public static bool EveryCornerTurnsLeft(GridPoint[] corners)
    {
        for (var index = 0; index < corners.Length; index++)
        {
            if (Turn(corners[index], corners[(index + 1) % corners.Length], corners[(index + 2) % corners.Length]) < 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The convex hull, counter-clockwise, by Andrew's monotone chain (Information Processing Letters 9(5), 1979).</summary>
    /// <param name="corners">At least three that are not all on a line, in any order.</param>
    /// <returns>Without corners on a straight edge; begins at the leftmost, of those the lowest.</returns>
    public static GridPoint[] Hull(GridPoint[] corners)
    {
        GridPoint[] sorted = [.. corners.OrderBy(corner => corner.X).ThenBy(corner => corner.Y)];
        var hull = new List<GridPoint>();

        // The lower chain from left to right, then the upper one back.
        for (var pass = 0; pass < 2; pass++, Array.Reverse(sorted))
        {
            var start = hull.Count;
            foreach (var corner in sorted)
            {
                while (hull.Count >= start + 2 && Turn(hull[^2], hull[^1], corner) <= 0)
                {
                    hull.RemoveAt(hull.Count - 1);
                }

                hull.Add(corner);
            }

            hull.RemoveAt(hull.Count - 1);
        }

        return [.. hull];
    }

    /// <summary>The corners without those on a straight edge, three at least.</summary>
    /// <param name="corners">A simple polygon's corners, in either direction.</param>
    /// <returns>A new array, in the same direction.</returns>
    public static GridPoint[] WithoutStraight(GridPoint[] corners)
    {
        var kept = new List<GridPoint>(corners);
        for (var index = 0; index < kept.Count && kept.Count > 3; )
        {
            var (before, here, after) = (kept[(index + kept.Count - 1) % kept.Count], kept[index], kept[(index + 1) % kept.Count]);
            if (Turn(before, here, after) == 0)
            {
                // The corner before may lie straight now.
                kept.RemoveAt(index);
                index = Math.Max(0, index - 1);
            }
            else
            {
                index++;
            }
        }

        return [.. kept];
    }
}
