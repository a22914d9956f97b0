using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>The copies that a pass has yet to lay, in order, and which of them fits a segment best: the fitness of Leung, Zhang and Sim
/// (2011), the gap's own width before a level top before the order.</summary>
/// <remarks>The copies are a linked list over an array, so that one is taken out in constant time; the list's head stands behind the last
/// copy. Neighbours of one kind are weighed once.</remarks>
internal sealed class BestFit
{
    // A fit of the gap's own width that is level with both walls.
    private const int PerfectFit = 6;
    private readonly RectangleSet _set;
    private readonly Skyline _skyline;
    private readonly int _head;
    private readonly int[] _next;
    private readonly Sides[] _sides;

    /// <summary>Sizes everything once.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="skyline">The skyline whose segments are filled.</param>
    public BestFit(RectangleSet set, Skyline skyline)
    {
        (_set, _skyline, _head) = (set, skyline, set.Copies);
        _next = new int[set.Copies + 1];
        _sides = new Sides[set.Copies];
        for (var copy = 0; copy < _sides.Length; copy++)
        {
            int kind = set.KindOf[copy];
            _sides[copy] = new Sides(set.Across[kind], set.Along[kind], kind, set.Turns[kind]);
        }
    }

    /// <summary>Takes up copies, those to be considered first in front.</summary>
    public void Begin(ReadOnlySpan<int> order)
    {
        int previous = _head;
        foreach (int copy in order)
        {
            _next[previous] = copy;
            previous = copy;
        }

        _next[previous] = _head;
    }

    /// <summary>Takes out the copy that follows another one, or the list's head; returns it.</summary>
    public int TakeAfter(int previous)
    {
        int copy = _next[previous];
        _next[previous] = _next[copy];
        return copy;
    }

    /// <summary>Writes the copies that are left, in order.</summary>
    public void CopyRest(Span<int> rest)
    {
        for (int copy = _next[_head], at = 0; copy != _head; copy = _next[copy])
        {
            rest[at++] = copy;
        }
    }

    /// <summary>Chooses the copy that fits a segment best, the first in order among equals.</summary>
    /// <param name="segment">The segment to fill.</param>
    /// <param name="limit">Where a copy must end, in grid units.</param>
    /// <param name="budget">Pays a step for each fit that is weighed.</param>
    /// <param name="bestPrevious">What stands before the chosen copy, for <see cref="TakeAfter"/>.</param>
    /// <param name="bestTurned">Whether it is to lie with its sides exchanged.</param>
    /// <param name="atLeft">Whether it is to lie at the segment's left end: where it is level with that wall, else at the higher
    /// one.</param>
    /// <returns>Whether any copy fits.</returns>
    public bool Choose(int segment, long limit, StepBudget budget, out int bestPrevious, out bool bestTurned, out bool atLeft)
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
        int head = _head;
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

    /// <summary>How well a rectangle fits: 4 for the gap's own width and 1 for each wall that it is level with; else 2 when it is level
    /// with one; else 0.</summary>
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
