using System.Diagnostics;
using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.PerfectBoxes;

/// <summary>The rectangles that can lie on a gap, the best first. One that leaves a rest beside or above it, which the copies left cannot
/// fill at a price that the slack pays, is no candidate.</summary>
internal sealed class GapCandidates
{
    // What a level end adds to the worth of an area, for each mark.
    private const double LevelWorth = 0.5;

    // A unit of area lost weighs as much as this many laid.
    private const double LossWorth = 4;

    private readonly BoxContents _box;
    private readonly int[] _left;
    private readonly BoxLosses _losses;

    // By depth, the candidates and how good they look.
    private readonly int[] _codes;
    private readonly double[] _worths;

    /// <param name="box">The rectangles and the box.</param>
    /// <param name="left">Copies left of each kind, which the search changes.</param>
    /// <param name="depths">Depths of the search, each with a list of its own.</param>
    /// <param name="losses">What rests lose.</param>
    public GapCandidates(BoxContents box, int[] left, int depths, BoxLosses losses)
    {
        (_box, _left, _losses) = (box, left, losses);
        (_codes, _worths) = (new int[2 * left.Length * depths], new double[2 * left.Length * depths]);
        Likings = new KindLikings(left.Length);
    }

    /// <summary>What this run likes.</summary>
    public KindLikings Likings { get; }

    /// <summary>Kind and turn of a listed candidate.</summary>
    public (int Kind, bool Turned) this[int index] => (_codes[index] >> 1, (_codes[index] & 1) != 0);

    /// <summary>Where the list of a depth begins.</summary>
    public int First(int depth) => depth * 2 * _left.Length;

    /// <summary>The gap, a local minimum of the skyline, with the fewest candidates; the lowest of equals.</summary>
    /// <param name="skylines">Holds the skyline.</param>
    /// <param name="at">Where it begins.</param>
    /// <param name="segments">Its segments.</param>
    /// <param name="slack">Area that may be lost.</param>
    /// <param name="budget">Pays for the kinds that are looked at.</param>
    /// <returns>Index of the segment; with no candidate at all, the node is a dead end and the caller
    /// closes the gap or gives it back.</returns>
    public int Tightest(BoxSkylines skylines, int at, int segments, long slack, StepBudget budget)
    {
        var (best, fewest, lowest) = (-1, int.MaxValue, int.MaxValue);
        for (var segment = 0; segment < segments && fewest > 0; segment++)
        {
            int floor = skylines.Y[at + segment];
            int extent = skylines.X[at + segment + 1] - skylines.X[at + segment];
            var gap = new BoxGap(extent, floor, skylines.LeftWall(at, segment), skylines.RightWall(at, segment, segments));
            if (gap.Depth <= 0)
            {
                continue;
            }

            int count = Count(gap, slack, fewest);
            budget.Spend(2 * (1 + _left.Length));
            if (count < fewest || (count == fewest && floor < lowest))
            {
                (best, fewest, lowest) = (segment, count, floor);
            }
        }

        Debug.Assert(best >= 0, "A skyline below the top has no local minimum.");
        return best;
    }

    /// <summary>Lists the candidates of a gap, the best first; returns where the list ends.</summary>
    /// <param name="depth">Whose list is written.</param>
    /// <param name="gap">The gap.</param>
    /// <param name="slack">Area that may be lost.</param>
    public int List(int depth, BoxGap gap, long slack)
    {
        int first = First(depth);
        int last = first;
        for (var kind = 0; kind < _left.Length; kind++)
        {
            for (var turn = 0; _left[kind] > 0 && turn < (_box.Turns[kind] ? 2 : 1); turn++)
            {
                var (across, along) = _box.Size(kind, turn == 1);
                long loss = Loss(gap, across, along);
                if (loss > slack)
                {
                    continue;
                }

                // Twice as much for the left wall or the gap's own width as for each other mark.
                int top = gap.Floor + along;
                bool whole = across == gap.Extent;
                int level = (whole ? 4 : 0) + (top == gap.LeftWall ? 2 : 0) + (top == gap.RightWall && whole ? 2 : 0);
                double worth = ((double)across * along * (1 + LevelWorth * level) - LossWorth * loss) * Likings[2 * kind + turn];
                int place = last++;
                for (; place > first && _worths[place - 1] < worth; place--)
                {
                    (_worths[place], _codes[place]) = (_worths[place - 1], _codes[place - 1]);
                }

                (_worths[place], _codes[place]) = (worth, 2 * kind + turn);
            }
        }

        return last;
    }

    /// <summary>How many candidates a gap has; not more than one above <paramref name="enough"/> are counted.</summary>
    private int Count(BoxGap gap, long slack, int enough)
    {
        var count = 0;
        for (var kind = 0; kind < _left.Length && count <= enough; kind++)
        {
            if (_left[kind] == 0)
            {
                continue;
            }

            count += Loss(gap, _box.Across[kind], _box.Along[kind]) <= slack ? 1 : 0;
            count += _box.Turns[kind] && Loss(gap, _box.Along[kind], _box.Across[kind]) <= slack ? 1 : 0;
        }

        return count;
    }

    /// <summary>Area lost beside and above a rectangle on a gap; <see cref="long.MaxValue"/> when it does not fit.</summary>
    /// <param name="gap">The gap.</param>
    /// <param name="across">Extent of the rectangle across the gap.</param>
    /// <param name="along">Extent along the box.</param>
    private long Loss(BoxGap gap, int across, int along)
    {
        int rest = gap.Extent - across;
        int above = _box.Height - gap.Floor - along;
        return rest < 0 || above < 0
            ? long.MaxValue
            : (long)_losses.LostAcross(rest) * Math.Min(along, gap.Depth) + (long)_losses.LostAlong(above) * across;
    }
}
