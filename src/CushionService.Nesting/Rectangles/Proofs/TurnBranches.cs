using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Decides whether copies that may turn fit a box, by branching on how many of each kind lie turned (branch and bound: Land
/// and Doig 1960). With the turns settled no copy counts at the lesser of two extents any more, so that most branches are ruled out by a
/// relaxation; the others are searched one after the other, each with growing shares of the steps.</summary>
internal sealed class TurnBranches
{
    // More branches than this are not searched one by one.
    private const int MostOpen = 400;
    private readonly RectangleSet _set;
    private readonly long _length;
    private readonly StepBudget _budget;

    // Kinds that may turn, the largest in all first; branches that are not ruled out yet; those that
    // are settled and open, in this round and the next.
    private readonly int[] _order;
    private readonly Stack<int[]> _branches = new();
    private List<RectangleSet> _open = [];
    private List<RectangleSet> _next = [];

    // Steps that each open branch gets in this round; four times as many in the next.
    private long _share = 30_000;
    private int _at;

    /// <summary>Begins with the branches of the first kind.</summary>
    /// <param name="set">All copies; some may turn.</param>
    /// <param name="length">Length of the box, grid units.</param>
    /// <param name="budget">Pays for the steps.</param>
    public TurnBranches(RectangleSet set, long length, StepBudget budget)
    {
        (_set, _length, _budget) = (set, length, budget);
        _order =
        [
            .. Enumerable
                .Range(0, set.Kinds)
                .Where(kind => set.Turns[kind])
                .OrderByDescending(kind => set.Across[kind] * set.Along[kind] * set.Count[kind]),
        ];
        var turned = new int[set.Kinds];
        Array.ForEach(_order, kind => turned[kind] = SettledTurns.Undecided);
        Branch(turned);
    }

    /// <summary>What is known so far.</summary>
    public BoxOutcome Outcome { get; private set; }

    /// <summary>Goes on for about as many steps as are given; a layout that is found is written to <paramref name="layout"/>.</summary>
    /// <param name="steps">Steps to spend.</param>
    /// <param name="layout">Takes the layout.</param>
    public BoxOutcome Run(long steps, RectangleLayout layout)
    {
        long end = _budget.Spent + steps;
        while (Outcome == BoxOutcome.Unknown && _branches.Count > 0 && _open.Count <= MostOpen && _budget.Spent < end)
        {
            Consider(_branches.Pop());
        }

        while (Outcome == BoxOutcome.Unknown && _branches.Count == 0 && _budget.Spent + _share <= end)
        {
            if (_at == _open.Count)
            {
                (_open, _next, _at, _share) = (_next, _open, 0, _share * 4);
                _next.Clear();
                Outcome = _open.Count == 0 ? BoxOutcome.Impossible : BoxOutcome.Unknown;
                continue;
            }

            var branch = _open[_at++];
            var box = new BoxProblem(new BoxGrid(branch), _share, _budget);
            var outcome = box.Decide(_length, _share);
            if (outcome == BoxOutcome.Unknown)
            {
                _next.Add(branch);
            }
            else if (outcome == BoxOutcome.Found)
            {
                SettledTurns.Read(_set, branch, box.Layout, layout);
                Outcome = outcome;
            }
        }

        return Outcome;
    }

    /// <summary>Settles how many copies of the next kind lie turned, each number a branch.</summary>
    /// <param name="turned">For each kind how many copies lie turned; at least one is not
    /// settled.</param>
    private void Branch(int[] turned)
    {
        int kind = Array.Find(_order, kind => turned[kind] == SettledTurns.Undecided);
        // A kind that fits the box in one turn only has no choice.
        int least = _set.Along[kind] <= _length ? 0 : _set.Count[kind];
        int most = _set.Across[kind] <= _length ? _set.Count[kind] : 0;
        for (int count = least; count <= most; count++)
        {
            int[] branch = [.. turned];
            branch[kind] = count;
            _branches.Push(branch);
        }
    }

    /// <summary>Rules a branch out by a relaxation, or settles its next kind, or keeps it for a
    /// search.</summary>
    /// <param name="turned">For each kind how many copies lie turned, or that it is not settled.</param>
    private void Consider(int[] turned)
    {
        var branch = SettledTurns.Of(_set, turned);
        if (
            new DualFeasible(branch).RulesOut(_length, _budget) is not null
            || new BoxProblem(new BoxGrid(branch), 0, _budget).RelaxationRulesOut(_length) is not null
        )
        {
            return;
        }

        if (Array.Exists(_order, kind => turned[kind] == SettledTurns.Undecided))
        {
            Branch(turned);
        }
        else
        {
            _open.Add(branch);
        }
    }
}
