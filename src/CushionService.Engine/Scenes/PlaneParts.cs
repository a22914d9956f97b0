namespace CushionService.Engine.Scenes;

/// <summary>Cuts a polygon of any shape along a line into parts that hang together, each a polygon of its own.</summary>
public static class PlaneParts
{
    /// <summary>What lies between two limits along a direction.</summary>
    /// <param name="polygon">Counter-clockwise, in millimetres; it need not be convex.</param>
    /// <param name="direction">One long.</param>
    /// <param name="from">The lower limit, in millimetres.</param>
    /// <param name="to">The upper limit, in millimetres.</param>
    public static IEnumerable<IReadOnlyList<PlanePoint>> Between(
        IReadOnlyList<PlanePoint> polygon,
        PlanePoint direction,
        double from,
        double to
    ) => Below(polygon, direction, to).SelectMany(part => Below(part, -1 * direction, -from));

    /// <summary>What lies at most as far along a direction as a limit.</summary>
    /// <remarks>The line crosses the outline in pairs of points, between which it lies inside: a part that leaves at one of them goes on
    /// from the other (general geometry).</remarks>
    /// <param name="polygon">Counter-clockwise, in millimetres; it need not be convex.</param>
    /// <param name="direction">One long.</param>
    /// <param name="limit">In millimetres; a point on the line counts as below.</param>
    /// <returns>The polygon itself where nothing is beyond the limit; none where everything is.</returns>
    public static IEnumerable<IReadOnlyList<PlanePoint>> Below(IReadOnlyList<PlanePoint> polygon, PlanePoint direction, double limit)
    {
        bool Beyond(int i) => polygon[i % polygon.Count].Dot(direction) > limit;
        // Starting beyond the line, each chain of points below it is met whole.
        int first = Enumerable.Range(0, polygon.Count).FirstOrDefault(Beyond, -1);
        if (first < 0)
        {
            return [polygon];
        }

        PlanePoint run = new(-direction.Y, direction.X);
        var chains = new List<List<PlanePoint>>();
        for (int i = first; i < first + polygon.Count; i++)
        {
            (PlanePoint from, PlanePoint to) = (polygon[i % polygon.Count], polygon[(i + 1) % polygon.Count]);
            if (Beyond(i) != Beyond(i + 1))
            {
                double a = from.Dot(direction) - limit,
                    b = to.Dot(direction) - limit;
                PlanePoint crossing = from + (a / (a - b) * (to - from));
                if (Beyond(i))
                {
                    chains.Add([]);
                }

                chains[^1].Add(crossing);
            }

            if (!Beyond(i + 1))
            {
                chains[^1].Add(to);
            }
        }

        (double At, int Chain)[] crossings =
        [
            .. chains
                .SelectMany((chain, i) => ((double, int)[])[(chain[0].Dot(run), i), (chain[^1].Dot(run), ~i)])
                .OrderBy(crossing => crossing.Item1),
        ];
        return Rings(chains, crossings);
    }

    // A chain's end is numbered by the complement of its number.
    private static List<IReadOnlyList<PlanePoint>> Rings(List<List<PlanePoint>> chains, (double At, int Chain)[] crossings)
    {
        var rings = new List<IReadOnlyList<PlanePoint>>();
        var done = new bool[chains.Count];
        for (var i = 0; i < chains.Count; i++)
        {
            var ring = new List<PlanePoint>();
            for (int next = i; next >= 0 && !done[next]; )
            {
                done[next] = true;
                ring.AddRange(chains[next]);
                int end = Array.FindIndex(crossings, crossing => crossing.Chain == ~next);
                // Crossings are sorted along the line, so number 2k and 2k + 1 are a pair.
                next = crossings[end ^ 1].Chain;
            }

            if (ring.Count > 2)
            {
                rings.Add(ring);
            }
        }

        return rings;
    }
}
