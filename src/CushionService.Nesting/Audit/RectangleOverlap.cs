namespace CushionService.Nesting.Audit;

/// <summary>Finds two rectangles that share area, by a plane sweep along y over the active x-intervals in order (Shamos
/// and Hoey 1976): while no two overlap, the active intervals are disjoint, so that a newcomer need only be compared
/// with its two neighbours. n log n comparisons; the ordered intervals are a flat array, since one block move is
/// cheaper than a tree for as many as lie side by side on a strip.</summary>
internal static class RectangleOverlap
{
    // Up to here the sweep's arrays lie on the stack: 64 rectangles take under 3 kB.
    private const int MostOnStack = 64;

    /// <summary>The indices of two rectangles that share area; null when none do.</summary>
    /// <param name="rectangles">Any number, in grid units; extents above 0.</param>
    /// <returns>Any two that overlap, not a certain two.</returns>
    public static (int First, int Second)? Find(ReadOnlySpan<GridRectangle> rectangles)
    {
        int count = rectangles.Length;
        return count <= MostOnStack
            ? Find(rectangles, stackalloc long[3 * count], stackalloc int[3 * count])
            : Find(rectangles, new long[3 * count], new int[3 * count]);
    }

    /// <param name="rectangles">The rectangles.</param>
    /// <param name="places">Room for three numbers for each: left edges of the active ones, and
    /// events.</param>
    /// <param name="indices">Room for three indices for each: the active ones, and what each event is
    /// of.</param>
    private static (int First, int Second)? Find(ReadOnlySpan<GridRectangle> rectangles, Span<long> places, Span<int> indices)
    {
        // Twice the y, plus one for a start: a rectangle that ends where another begins leaves first, for touching is not sharing.
        Span<long> lefts = places[..rectangles.Length],
            when = places[rectangles.Length..];
        Span<int> active = indices[..rectangles.Length],
            which = indices[rectangles.Length..];
        for (var index = 0; index < rectangles.Length; index++)
        {
            (when[2 * index], which[2 * index]) = (2 * rectangles[index].Y + 1, index);
            (when[2 * index + 1], which[2 * index + 1]) = (2 * (rectangles[index].Y + rectangles[index].Length), ~index);
        }

        when.Sort(which);
        var count = 0;
        foreach (int entry in which)
        {
            int index = entry < 0 ? ~entry : entry;
            var r = rectangles[index];
            int at = lefts[..count].BinarySearch(r.X);
            if (entry < 0)
            {
                // It leaves: the block behind it moves up by one.
                lefts[(at + 1)..count].CopyTo(lefts[at..]);
                active[(at + 1)..count].CopyTo(active[at..]);
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

            // It comes between its neighbours: the block behind it moves back by one.
            lefts[at..count].CopyTo(lefts[(at + 1)..]);
            active[at..count].CopyTo(active[(at + 1)..]);
            (lefts[at], active[at]) = (r.X, index);
            count++;
        }

        return null;
    }
}
