using System.Diagnostics;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Lays most of a very large order in n log n: on the lowest gap goes a copy of just its width, level with a wall if one is;
/// else one that is level with a wall; else the wider of two that fill the gap together; else the widest (Burke, Kendall
/// and Whitwell 2004). While many sizes are left, almost nothing is lost.</summary>
internal sealed class BulkPass
{
    private readonly RectangleSet _set;
    private readonly BulkChoice _choice;

    /// <summary>Sorts the copies once.</summary>
    public BulkPass(RectangleSet set)
    {
        _set = set;
        _choice = new BulkChoice(set);
        Left = [];
    }

    /// <summary>The copies that are left after a run, ascending.</summary>
    public int[] Left { get; private set; }

    /// <summary>Lays copies, until few are left.</summary>
    /// <param name="skyline">Where they are laid.</param>
    /// <param name="leave">How many copies are left, not counting those kept back.</param>
    /// <param name="keepBack">How many of the smallest, by longer side, are kept back.</param>
    /// <param name="layout">Takes the places.</param>
    /// <param name="budget">Pays for the steps.</param>
    /// <returns>The area lost under the skyline, in square grid units.</returns>
    public long Run(Skyline skyline, int leave, int keepBack, RectangleLayout layout, StepBudget budget)
    {
        long lost = 0;
        int[] bySize = [.. Enumerable.Range(0, _set.Copies)];
        Array.Sort(_set.KindOf.Select(kind => Math.Max(_set.Across[kind], _set.Along[kind])).ToArray(), bySize);
        foreach (int copy in bySize.AsSpan(0, keepBack))
        {
            _choice.Remove(copy);
        }

        leave += keepBack;
        for (int left = _set.Copies; left > leave; )
        {
            budget.Spend(32);
            int segment = skyline.Lowest();
            long floor = skyline.Y(segment);
            var (leftRise, rightRise) = (skyline.LeftWall(segment) - floor, skyline.RightWall(segment) - floor);
            int option = _choice.Choose(skyline.Extent(segment), leftRise, rightRise);
            if (option < 0)
            {
                lost += skyline.Raise(segment);
                continue;
            }

            int copy = option >> 1;
            Debug.Assert(!_choice.IsGone(copy), "A copy is laid twice.");
            int kind = _set.KindOf[copy];
            bool turned = (option & 1) == 1 && _set.Turns[kind];
            var (across, along) = turned ? (_set.Along[kind], _set.Across[kind]) : (_set.Across[kind], _set.Along[kind]);
            bool atLeft = along == leftRise || (along != rightRise && leftRise >= rightRise);
            layout.Put(copy, skyline.Lay(segment, across, along, atLeft), floor, turned);
            _choice.Remove(copy);
            left--;
        }

        // What was kept back was never laid.
        var kept = new HashSet<int>(bySize[..keepBack]);
        Left = [.. Enumerable.Range(0, _set.Copies).Where(copy => !_choice.IsGone(copy) || kept.Contains(copy))];
        return lost;
    }
}
