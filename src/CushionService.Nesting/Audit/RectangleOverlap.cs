namespace CushionService.Nesting.Audit;

/// <summary>Finds two rectangles that share area, by a plane sweep along y over the active x-intervals in order (Shamos
/// and Hoey 1976): while no two overlap, the active intervals are disjoint, so that a newcomer need only be compared
/// with its two neighbours. n log n comparisons; the ordered intervals are a flat array, since one block move is
/// cheaper than a tree for as many as lie side by side on a strip.</summary>
internal static class RectangleOverlap
{
    /// <summary>The indices of two rectangles that share area; null when none do.</summary>
    public static (int First, int Second)? Find(ReadOnlySpan<GridRectangle> rectangles)
    {
        // Twice the y, plus one for a start: a rectangle that ends where another begins leaves first, for touching is not sharing.
        var when = new long[rectangles.Length * 2];
        var which = new int[rectangles.Length * 2];
        for (var index = 0; index < rectangles.Length; index++)
        {
            (when[2 * index], which[2 * index]) = (2 * rectangles[index].Y + 1, index);
            (when[2 * index + 1], which[2 * index + 1]) = (2 * (rectangles[index].Y + rectangles[index].Length), ~index);
        }

        Array.Sort(when, which);
        var lefts = new long[rectangles.Length];
        var active = new int[rectangles.Length];
        var count = 0;
        foreach (int entry in which)
        {
            int index = entry < 0 ? ~entry : entry;
            var r = rectangles[index];
            int at = Array.BinarySearch(lefts, 0, count, r.X);
            if (entry < 0)
            {
                lefts.AsSpan(at + 1, count - at - 1).CopyTo(lefts.AsSpan(at));
                active.AsSpan(at + 1, count - at - 1).CopyTo(active.AsSpan(at));
                count--;
                continue;
            }

            if (at >= 0)
            {
                return (active[at], index);
            }

            at = ~at;
            if (at > 0 && lefts[at - 1] + rectangles[active[at - 1]].Width > r.X)
            {
                return (active[at - 1], index);
            }

            if (at < count && lefts[at] < r.X + r.Width)
            {
                return (index, active[at]);
            }

            lefts.AsSpan(at, count - at).CopyTo(lefts.AsSpan(at + 1));
            active.AsSpan(at, count - at).CopyTo(active.AsSpan(at + 1));
            (lefts[at], active[at]) = (r.X, index);
            count++;
        }

        return null;
    }
}
