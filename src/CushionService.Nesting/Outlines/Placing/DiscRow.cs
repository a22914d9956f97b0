namespace CushionService.Nesting.Outlines.Placing;

/// <summary>Level discs across the strip: the left edges of their bounding boxes, ascending, whole grid units.</summary>
/// <param name="Lefts">Ascending, at least a disc apart.</param>
internal readonly record struct DiscRow(double[] Lefts)
{
    /// <summary>The rows that fill a strip: for every number of discs whose gaps are too small for another, the row that spreads
    /// over the whole width, the one in its gaps, the two that leave half a gap at one edge, so that rows of as many discs lie in
    /// each other's gaps, and the two that are pressed to one edge.</summary>
    /// <param name="room">The width of the strip less that of a disc; 0 at least.</param>
    /// <param name="across">The width of a disc; positive.</param>
    /// <param name="most">The most discs in a row.</param>
    public static List<DiscRow> Across(double room, double across, int most)
    {
        List<DiscRow> rows = [new([0])];
        if (room > 0)
        {
            rows.Add(new([room]));
            rows.Add(new([Math.Floor(room / 2)]));
        }

        // Wider gaps than a disc hold another one.
        var fewest = Math.Clamp((int)(room / (2 * across)), 1, Math.Max(1, most - 1));
        for (var gaps = fewest; gaps * across <= room && gaps < most; gaps++)
        {
            var spread = room / gaps;
            rows.Add(Of(gaps + 1, 0, spread));
            rows.Add(Of(gaps, spread / 2, spread));
            var half = room / (gaps + 0.5);
            if (half >= across)
            {
                rows.Add(Of(gaps + 1, 0, half));
                rows.Add(Of(gaps + 1, half / 2, half));
            }

            rows.Add(Of(gaps + 1, 0, across));
            rows.Add(Of(gaps + 1, room - gaps * across, across));
        }

        return rows;
    }

    /// <summary>A row of equal gaps, each disc rounded down to whole units.</summary>
    private static DiscRow Of(int discs, double first, double gap)
    {
        var lefts = new double[discs];
        for (var disc = 0; disc < discs; disc++)
        {
            lefts[disc] = Math.Floor(first + disc * gap);
        }

        return new(lefts);
    }
}
