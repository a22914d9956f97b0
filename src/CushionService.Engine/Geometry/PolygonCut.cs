using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Geometry;

/// <summary>A simple polygon parted along a level or a plumb line.</summary>
/// <param name="Parts">The parts on both sides of the line, counter-clockwise; one where the line passes it by.</param>
/// <param name="Joint">How much of the line lies within the polygon: how far its parts touch.</param>
internal sealed record PolygonCut(ImmutableArray<ImmutableArray<Point>> Parts, Length Joint)
{
    /// <summary>Parts a polygon along a level line.</summary>
    /// <param name="corners">A simple polygon, counter-clockwise.</param>
    /// <param name="y">Where the line is.</param>
    public static PolygonCut Level(ImmutableArray<Point> corners, Length y)
    {
        Side low = Below(corners, y),
            high = Below(Mirrored(corners, Upended), -y);
        return new PolygonCut([.. low.Parts, .. high.Parts.Select(part => Mirrored(part, Upended))], Shared(low.Runs, high.Runs));
    }

    /// <summary>Parts a polygon along a plumb line.</summary>
    /// <param name="corners">A simple polygon, counter-clockwise.</param>
    /// <param name="x">Where the line is.</param>
    public static PolygonCut Plumb(ImmutableArray<Point> corners, Length x)
    {
        PolygonCut cut = Level(Mirrored(corners, Swapped), x);
        return cut with { Parts = [.. cut.Parts.Select(part => Mirrored(part, Swapped))] };
    }

    // Either mirroring turns the polygon clockwise, hence backwards.
    private static ImmutableArray<Point> Mirrored(ImmutableArray<Point> corners, Func<Point, Point> mirror) =>
        [.. corners.Reverse().Select(mirror)];

    private static Point Upended(Point at) => new(at.X, -at.Y);

    private static Point Swapped(Point at) => new(at.Y, at.X);

    // What lies below the line, and the runs along which it touches the line from below. Corners on the line count as above it: an edge
    // along the line is then no crossing of its own.
    private static Side Below(ImmutableArray<Point> corners, Length y)
    {
        int first = IndexOf(corners, at => at.Y >= y);
        if (first < 0)
        {
            return new Side([corners], []);
        }

        // Each chain comes down through the line, and leaves it upwards.
        List<List<Point>> chains = [];
        for (var i = 0; i < corners.Length; i++)
        {
            Point from = corners[(first + i) % corners.Length],
                to = corners[(first + i + 1) % corners.Length];
            if (from.Y >= y && to.Y < y)
            {
                chains.Add([Crossing(from, to, y)]);
            }

            if (to.Y < y)
            {
                chains[^1].Add(to);
            }
            else if (from.Y < y)
            {
                chains[^1].Add(Crossing(to, from, y));
            }
        }

        // Within a counter-clockwise polygon a run begins where a chain comes down and ends where one leaves, so that the nth of each,
        // from the left, belong together.
        int[] down = [.. Enumerable.Range(0, chains.Count).OrderBy(chain => chains[chain][0].X.Nanometres)],
            up = [.. Enumerable.Range(0, chains.Count).OrderBy(chain => chains[chain][^1].X.Nanometres)];
        int[] next = new int[chains.Count];
        for (var run = 0; run < down.Length; run++)
        {
            next[up[run]] = down[run];
        }

        return new Side(Closed(chains, next), [.. down.Select((chain, run) => (chains[chain][0].X, chains[up[run]][^1].X))]);
    }

    // Follows the chains from each to the next until they close.
    private static ImmutableArray<ImmutableArray<Point>> Closed(List<List<Point>> chains, int[] next)
    {
        var parts = ImmutableArray.CreateBuilder<ImmutableArray<Point>>();
        bool[] taken = new bool[chains.Count];
        for (var start = 0; start < chains.Count; start++)
        {
            List<Point> part = [];
            for (int chain = start; !taken[chain]; chain = next[chain])
            {
                taken[chain] = true;
                part.AddRange(chains[chain]);
            }

            ImmutableArray<Point> corners = [.. part.Where((at, i) => at != part[(i + 1) % part.Count])];
            if (corners.Length > 2 && Polygon.Area(corners).SquareNanometres > 0)
            {
                parts.Add(corners);
            }
        }

        return parts.ToImmutable();
    }

    private static Point Crossing(Point above, Point below, Length y)
    {
        Int128 rise = (above.Y - below.Y).Nanometres,
            run = (above.X - below.X).Nanometres;
        return new Point(above.X - Length.FromNanometres((long)(run * (above.Y - y).Nanometres / rise)), y);
    }

    private static Length Shared(ImmutableArray<(Length From, Length To)> low, ImmutableArray<(Length From, Length To)> high)
    {
        var shared = Length.Zero;
        foreach ((Length from, Length to) in low)
        {
            foreach ((Length otherFrom, Length otherTo) in high)
            {
                Length overlap = Length.Min(to, otherTo) - Length.Max(from, otherFrom);
                shared += Length.Max(overlap, Length.Zero);
            }
        }

        return shared;
    }

    private static int IndexOf(ImmutableArray<Point> corners, Func<Point, bool> holds)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            if (holds(corners[i]))
            {
                return i;
            }
        }

        return -1;
    }

    private readonly record struct Side(ImmutableArray<ImmutableArray<Point>> Parts, ImmutableArray<(Length From, Length To)> Runs);
}
