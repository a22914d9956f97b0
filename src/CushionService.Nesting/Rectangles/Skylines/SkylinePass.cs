using System.Diagnostics;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Lays all copies in one pass: on the lowest segment of the skyline goes the copy that fits it best, the first
/// in the given order among equals (best fit of Burke, Kendall and Whitwell 2004, with the fitness of Leung, Zhang and
/// Sim 2011: exact width before level top before order). Allocates nothing.</summary>
internal sealed class SkylinePass : ISequencePass
{
    // A fit of the gap's own width that is level with both walls.
    private const int PerfectFit = 6;
    private readonly RectangleSet _set;
    private readonly Skyline _skyline;
    private readonly int[] _next;
    private readonly Sides[] _sides;
    private long _startTop;
    private long _startLost;

    public SkylinePass(RectangleSet set, long width, int atOnce)
    {
        _set = set;
        _skyline = new Skyline(width, atOnce);
        _next = new int[set.Copies + 1];
        _sides = new Sides[set.Copies];
        for (var copy = 0; copy < _sides.Length; copy++)
        {
            int kind = set.KindOf[copy];
            _sides[copy] = new Sides(set.Across[kind], set.Along[kind], kind, set.Turns[kind]);
        }

        Layout = new RectangleLayout(set);
    }

    /// <inheritdoc/>
    public RectangleLayout Layout { get; }

    /// <summary>Lets every pass start on a skyline under which some copies lie and some area is lost.</summary>
    public void StartFrom(Skyline skyline, long lost)
    {
        _skyline.StartFrom(skyline);
        (_startTop, _startLost) = (skyline.Top(), lost);
    }

    /// <inheritdoc/>
    public long Length { get; private set; }

    /// <inheritdoc/>
    public long Lay(int[] order, long limit, long most, StepBudget budget)
    {
        _skyline.Reset();
        int head = _set.Copies;
        for (int at = 0, previous = head; at < order.Length; previous = order[at++])
        {
            _next[previous] = order[at];
        }

        _next[order[^1]] = head;
        bool open = limit >= Skyline.Wall;
        long slack = open ? long.MaxValue : _set.Width * limit - _set.Area - _startLost + most;
        long left = 0;
        foreach (int copy in order)
        {
            left += _set.Across[_set.KindOf[copy]] * _set.Along[_set.KindOf[copy]];
        }

        Length = _startTop;
        while (left > 0)
        {
            int segment = _skyline.Lowest();
            if (!Choose(segment, head, limit, budget, out int previous, out bool turned, out bool atLeft))
            {
                if (Math.Min(_skyline.LeftWall(segment), _skyline.RightWall(segment)) >= Skyline.Wall)
                {
                    return left > most ? long.MaxValue : left;
                }

                slack -= _skyline.Raise(segment);
                if (slack < 0)
                {
                    return long.MaxValue;
                }

                continue;
            }

            int copy = _next[previous];
            _next[previous] = _next[copy];
            Length = Math.Max(Length, Put(copy, segment, turned, atLeft));
            left -= _set.Across[_set.KindOf[copy]] * _set.Along[_set.KindOf[copy]];
            Debug.Assert(open || Length <= limit, "A copy ends above the limit.");
        }

        Debug.Assert(left == 0 && slack >= 0, "The areas laid, lost and left do not add up to the box.");
        return 0;
    }

    /// <summary>Lays on a sheet what fits, in one pass over <paramref name="order"/>; what was laid moves to its front.</summary>
    /// <returns>How many copies were laid.</returns>
    public int Fill(Span<int> order, long limit, StepBudget budget)
    {
        _skyline.Reset();
        int head = _set.Copies;
        var previousCopy = head;
        foreach (int copy in order)
        {
            _next[previousCopy] = copy;
            previousCopy = copy;
        }

        _next[previousCopy] = head;
        var laid = 0;
        while (laid < order.Length)
        {
            int segment = _skyline.Lowest();
            if (!Choose(segment, head, limit, budget, out int previous, out bool turned, out bool atLeft))
            {
                if (Math.Min(_skyline.LeftWall(segment), _skyline.RightWall(segment)) >= Skyline.Wall)
                {
                    break;
                }

                _skyline.Raise(segment);
                continue;
            }

            int copy = _next[previous];
            _next[previous] = _next[copy];
            Put(copy, segment, turned, atLeft);
            order[laid++] = copy;
        }

        for (int copy = _next[head], at = laid; copy != head; copy = _next[copy])
        {
            order[at++] = copy;
        }

        return laid;
    }

    private long Put(int copy, int segment, bool turned, bool atLeft)
    {
        int kind = _set.KindOf[copy];
        var (across, along) = turned ? (_set.Along[kind], _set.Across[kind]) : (_set.Across[kind], _set.Along[kind]);
        long y = _skyline.Y(segment);
        Layout.Put(copy, _skyline.Lay(segment, across, along, atLeft), y, turned);
        return y + along;
    }

    private bool Choose(int segment, int head, long limit, StepBudget budget, out int bestPrevious, out bool bestTurned, out bool atLeft)
    {
        long gap = _skyline.Extent(segment);
        long y = _skyline.Y(segment);
        long left = _skyline.LeftWall(segment) - y;
        long right = _skyline.RightWall(segment) - y;
        long room = limit - y;

        // No fit is better than one of the gap's own width that is level with as many walls as can be level at once.
        int most = left == right ? PerfectFit : PerfectFit - 1;
        var (best, weighed) = (-1, 0);
        (bestPrevious, bestTurned) = (-1, false);
        var lastKind = -1;
        int[] next = _next;
        Sides[] sides = _sides;
        for (int previous = head, copy = next[head]; copy != head; previous = copy, copy = next[copy])
        {
            ref readonly var side = ref sides[copy];
            if (side.Kind == lastKind)
            {
                continue;
            }

            lastKind = side.Kind;
            weighed++;
            if (side.Across <= gap && side.Along <= room)
            {
                int fitness = Fitness(side.Across, side.Along, gap, left, right);
                if (fitness > best)
                {
                    (best, bestPrevious, bestTurned) = (fitness, previous, false);
                }
            }

            if (side.Turns && side.Along <= gap && side.Across <= room)
            {
                int fitness = Fitness(side.Along, side.Across, gap, left, right);
                if (fitness > best)
                {
                    (best, bestPrevious, bestTurned) = (fitness, previous, true);
                }
            }

            if (best >= most)
            {
                break;
            }
        }

        budget.Spend(weighed + 1);
        if (best < 0)
        {
            atLeft = false;
            return false;
        }

        int chosen = _set.KindOf[_next[bestPrevious]];
        long rise = bestTurned ? _set.Across[chosen] : _set.Along[chosen];
        atLeft = rise == left || (rise != right && left >= right);
        return true;
    }

    private static int Fitness(long across, long along, long gap, long left, long right)
    {
        int level = (along == left ? 1 : 0) + (along == right ? 1 : 0);
        return across == gap ? 4 + level
            : level > 0 ? 2
            : 0;
    }

    /// <summary>What the inner loop reads of a copy, side by side in memory.</summary>
    private readonly record struct Sides(long Across, long Along, int Kind, bool Turns);
}
