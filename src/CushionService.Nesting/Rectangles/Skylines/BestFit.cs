using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Which of the copies that a pass has yet to lay fits a segment best: the fitness of Leung, Zhang and Sim (2011), the gap's own
/// width before a level top before the order. Neighbours of one kind are weighed once.</summary>
internal sealed class BestFit
{
    // A fit of the gap's own width that is level with both walls.
    private const int PerfectFit = 6;

    // What a choice takes in steps beside what is weighed, and how many copies of one kind are passed over in the time of a step.
    private const int StepsOfChoice = 3;
    private const int PassedPerStep = 4;
    private readonly RectangleSet _set;
    private readonly Skyline _skyline;
    private readonly CopyChain _chain;
    private readonly CopySides[] _sides;

    /// <summary>Sizes everything once.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="skyline">The skyline whose segments are filled.</param>
    public BestFit(RectangleSet set, Skyline skyline)
    {
        (_set, _skyline, _chain) = (set, skyline, new CopyChain(set.Copies));
        _sides = new CopySides[set.Copies];
        for (var copy = 0; copy < _sides.Length; copy++)
        {
            int kind = set.KindOf[copy];
            _sides[copy] = new CopySides(set.Across[kind], set.Along[kind], kind, set.Turns[kind]);
        }
    }

    /// <summary>The copies that are left, in order.</summary>
    public CopyChain Left => _chain;

    /// <summary>Chooses the copy that fits a segment best, the first in order among equals.</summary>
    /// <param name="segment">The segment to fill.</param>
    /// <param name="limit">Where a copy must end, in grid units.</param>
    /// <param name="budget">Pays a step for each fit that is weighed.</param>
    /// <param name="bestPrevious">What comes before the chosen copy, for <see cref="CopyChain.TakeAfter"/>.</param>
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
        var (best, weighed, passed) = (-1, 0, 0);
        (bestPrevious, bestTurned) = (-1, false);
        var lastKind = -1;
        int head = _chain.Head;
        int[] next = _chain.Next;
        CopySides[] sides = _sides;
        for (int previous = head, copy = next[head]; copy != head; previous = copy, copy = next[copy])
        {
            ref readonly var side = ref sides[copy];
            if (side.Kind == lastKind)
            {
                passed++;
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

        budget.Spend(StepsOfChoice + weighed + (passed / PassedPerStep));
        if (best < 0)
        {
            atLeft = false;
            return false;
        }

        int chosen = _set.KindOf[next[bestPrevious]];
        long rise = bestTurned ? _set.Across[chosen] : _set.Along[chosen];
        atLeft = rise == left || (rise != right && left >= right);
        return true;
    }

    /// <summary>How well a rectangle fits: 4 for the gap's own width and 1 for each wall that it is level with; else 2 when it is level
    /// with one; else 0.</summary>
    /// <param name="across">Extent across, at most the gap's.</param>
    /// <param name="along">Extent along.</param>
    /// <param name="gap">Width of the gap.</param>
    /// <param name="left">How far its left wall rises.</param>
    /// <param name="right">How far its right wall rises.</param>
    private static int Fitness(long across, long along, long gap, long left, long right)
    {
        int level = (along == left ? 1 : 0) + (along == right ? 1 : 0);
        return across == gap ? 4 + level
            : level > 0 ? 2
            : 0;
    }
}
