using System.Numerics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Asks whether all copies fit the strip up to a length. Some kinds alone often cannot, which is quicker to show than that all
/// cannot; so sets of the larger kinds are tried first, each with growing shares of the steps.</summary>
internal sealed class BoxProblem(BoxGrid grid, long mostSteps, StepBudget budget)
{
    // Sets of kinds grow fast with their number; beyond this all kinds are searched together.
    private const int MostKindsInParts = 10;

    // A linear program of more kinds takes longer than a page can wait.
    private const int MostKindsRelaxed = 14;

    // Half of the steps for branches on turns, half for turning each copy as it is laid.
    private const int TurnedShare = 2;

    // With fewer steps the whole order alone is searched.
    private const long LeastForParts = 60_000;
    private readonly RectangleSet _set = grid.Set;

    // Binary logarithm of the states that the search of a part remembers.
    private const int SeenByPart = 12;
    private readonly List<int[]> _subsets = Subsets(grid);
    private BoxPart?[] _parts = [];
    private BoxPart? _whole;
    private TurnBranches? _branches;
    private int _height;

    /// <summary>The layout, after one was found.</summary>
    public RectangleLayout Layout { get; } = new(grid.Set);

    /// <summary>The figures by which a relaxation rules a box out; null when none does.</summary>
    public string? RelaxationRulesOut(long length)
    {
        if (grid.Height(length) is not { } height)
        {
            return null;
        }

        return grid.EachFits(height) ? Whole(height).Figures : "a piece does not fit";
    }

    /// <summary>Searches for so many steps.</summary>
    public BoxOutcome Decide(long length, long steps)
    {
        if (grid.Height(length) is not { } height)
        {
            return BoxOutcome.Unknown;
        }

        long end = budget.Spent + steps;
        var whole = Whole(height);
        if (Array.IndexOf(_set.Turns, true) >= 0)
        {
            _branches ??= new TurnBranches(_set, length, budget);
            if (_branches.Run(steps - steps / TurnedShare, Layout) != BoxOutcome.Unknown)
            {
                return _branches.Outcome;
            }

            steps = end - budget.Spent;
        }

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

    /// <summary>The first kinds by area, by longer and by shorter side, and all kinds but one.</summary>
    private static List<int[]> Subsets(BoxGrid grid)
    {
        var parts = new List<int[]>();
        int kinds = grid.Set.Kinds;
        if (kinds > MostKindsInParts)
        {
            return parts;
        }

        for (var rule = 0; rule < 3; rule++)
        {
            int[] order = [.. Enumerable.Range(0, kinds).OrderByDescending(kind => Size(kind, rule))];
            for (var taken = 1; taken < kinds; taken++)
            {
                Propose(order[..taken]);
            }
        }

        for (var dropped = 0; dropped < kinds && kinds > 2; dropped++)
        {
            Propose([.. Enumerable.Range(0, kinds).Where(kind => kind != dropped)]);
        }

        return parts;

        long Size(int kind, int rule) =>
            rule switch
            {
                0 => (long)grid.Across[kind] * grid.Along[kind],
                1 => Math.Max(grid.Across[kind], grid.Along[kind]),
                _ => Math.Min(grid.Across[kind], grid.Along[kind]),
            };

        void Propose(int[] part)
        {
            Array.Sort(part);
            if (!parts.Any(other => other.SequenceEqual(part)))
            {
                parts.Add(part);
            }
        }
    }
}
