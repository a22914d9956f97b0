using System.Numerics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Asks whether all copies fit the strip up to a length. Some kinds alone often cannot, which is quicker to show than that all
/// cannot; so sets of the larger kinds are tried first, each with growing shares of the steps.</summary>
/// <param name="grid">The copies, on a grid that is fine enough.</param>
/// <param name="mostSteps">All steps of the search; with more of them more states are
/// remembered.</param>
/// <param name="budget">Pays for the steps.</param>
internal sealed class BoxProblem(BoxGrid grid, long mostSteps, StepBudget budget)
{
    // A linear program of more kinds takes longer than a page can wait.
    private const int MostKindsRelaxed = 14;

    // Of the steps, one part in this many for turning each copy as it is laid, which rules some kinds out together; the rest for branches
    // on turns, which decide most.
    private const int TurnedShare = 4;

    // With fewer steps the whole order alone is searched.
    private const long LeastForParts = 60_000;
    private readonly RectangleSet _set = grid.Set;

    // Binary logarithm of the states that the search of a part remembers.
    private const int SeenByPart = 12;
    private readonly List<int[]> _subsets = KindSubsets.Of(grid);
    private BoxPart?[] _parts = [];
    private BoxPart? _whole;
    private TurnBranches? _branches;
    private int _height;

    /// <summary>The layout, after one was found.</summary>
    public RectangleLayout Layout { get; } = new(grid.Set);

    /// <summary>The figures with which a relaxation rules a box out; null when none does.</summary>
    /// <param name="length">In grid units.</param>
    public string? RelaxationRulesOut(long length)
    {
        if (grid.Height(length) is not { } height)
        {
            return null;
        }

        return grid.EachFits(height) ? Whole(height).Figures : "a piece does not fit";
    }

    /// <summary>Searches for about as many steps as are given.</summary>
    /// <param name="length">In grid units.</param>
    /// <param name="steps">Steps to spend.</param>
    /// <returns><see cref="BoxOutcome.Unknown"/> when the steps ran out; a later call goes on from
    /// there.</returns>
    public BoxOutcome Decide(long length, long steps)
    {
        if (grid.Height(length) is not { } height)
        {
            return BoxOutcome.Unknown;
        }

        long end = budget.Spent + steps;
        var whole = Whole(height);
        if (_set.MayTurn)
        {
            _branches ??= new TurnBranches(_set, length, budget);
            if (_branches.Run(steps - steps / TurnedShare, Layout) != BoxOutcome.Unknown)
            {
                return _branches.Outcome;
            }

            steps = end - budget.Spent;
        }

        // Small parts first: a set of kinds that cannot fit is shown soon, or not at all.
        for (long share = Math.Max(steps / 1000, 2000); share < steps / 4; share *= 4)
        {
            for (var index = 0; index < _subsets.Count && steps > LeastForParts && budget.Spent < end - steps / 3; index++)
            {
                _parts[index] ??= new BoxPart(grid, _subsets[index], height, true, SeenByPart, budget);
                if (_parts[index]!.Run(share) == BoxOutcome.Impossible)
                {
                    return BoxOutcome.Impossible;
                }
            }

            if (whole.Run(Math.Min(share, end - budget.Spent)) != BoxOutcome.Unknown)
            {
                break;
            }
        }

        if (whole.Run(end - budget.Spent) == BoxOutcome.Found)
        {
            whole.Finder.Laid.Read(grid, whole.FoundSideways, Layout);
        }

        return whole.Outcome;
    }

    /// <summary>All kinds in a box of a height; what was known of another height is dropped.</summary>
    private BoxPart Whole(int height)
    {
        if (_whole is null || height != _height)
        {
            int seenLog = Math.Clamp(BitOperations.Log2((ulong)mostSteps / 64 + 1), 6, 19);
            _height = height;
            _branches = null;
            _parts = new BoxPart?[_subsets.Count];
            _whole = new BoxPart(grid, [.. Enumerable.Range(0, _set.Kinds)], height, _set.Kinds <= MostKindsRelaxed, seenLog, budget);
        }

        return _whole;
    }
}
