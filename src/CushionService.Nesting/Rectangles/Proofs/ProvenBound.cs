using System.Diagnostics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>A length that no layout can beat, with the argument for it. Alignment and flaws only forbid more, so that it holds
/// with them too.</summary>
internal sealed class ProvenBound
{
    // Above this many copies no search through all layouts has ever ended.
    private const int MostCopiesForBox = 60;
    private readonly RectangleSet _set;
    private readonly SaleLadder _sale;
    private readonly StepBudget _budget;
    private long _tried = -1;

    // Those of the first bound are put into words when someone asks; most are soon replaced.
    private string? _figures;

    /// <summary>Begins with the area over the width, and the longest copy.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="sale">The lengths that can be bought.</param>
    /// <param name="budget">Pays for the steps.</param>
    public ProvenBound(RectangleSet set, SaleLadder sale, StepBudget budget)
    {
        (_set, _sale, _budget) = (set, sale, budget);
        long longest = set.LongestAtLeast();
        long byArea = (set.Area + set.Width - 1) / set.Width;
        (Length, Kind) = (Math.Max(longest, byArea), ProofKind.Area);
    }

    /// <summary>The bound, in grid units.</summary>
    public long Length { get; private set; }

    /// <summary>The argument.</summary>
    public ProofKind Kind { get; private set; }

    /// <summary>Its figures, in one line.</summary>
    public string Figures =>
        _figures ??= (Length - 1) * _set.Width < _set.Area ? $"area {_set.Area} over width {_set.Width}" : $"a piece is {Length} long";

    /// <summary>The exact search, where the order is small enough for one; made when first asked for.</summary>
    public BoxProblem? Box { get; private set; }

    /// <summary>Tries to rule out the length without a search.</summary>
    /// <param name="length">A length that might be long enough, grid units; tried once.</param>
    public void Relax(long length)
    {
        if (length == _tried || length < Length)
        {
            return;
        }

        _tried = length;
        if (new DualFeasible(_set).RulesOut(length, _budget) is { } figures)
        {
            RuleOut(length, ProofKind.DualFeasible, figures);
            return;
        }

        if (Box is null && _set.Copies <= MostCopiesForBox && new BoxGrid(_set) is { IsFine: true } grid)
        {
            Box = new BoxProblem(grid, _budget.Limit, _budget);
        }

        if (Box?.RelaxationRulesOut(length) is { } weights)
        {
            RuleOut(length, ProofKind.Relaxation, weights);
        }
    }

    /// <summary>Searches a box of the length for at most as many steps as are given. Returns whether a layout was found.</summary>
    /// <param name="length">A length that might be long enough, grid units.</param>
    /// <param name="steps">Steps to spend.</param>
    /// <remarks>A box that is searched through in vain raises the bound.</remarks>
    public bool Decide(long length, long steps)
    {
        long before = _budget.Spent;
        var outcome = Box?.Decide(length, steps) ?? BoxOutcome.Unknown;
        if (outcome == BoxOutcome.Impossible)
        {
            RuleOut(length, ProofKind.Exhaustive, $"{_budget.Spent - before} steps of search rule out {_set.Width} by {length}");
        }

        return outcome == BoxOutcome.Found;
    }

    /// <summary>The lowest length that is sold as short as the bound.</summary>
    public long Goal => _sale.Reach(_sale.RungFor(Length));

    /// <summary>Takes over a bound from elsewhere, when it is better.</summary>
    /// <param name="length">A length that no layout can beat, in grid units.</param>
    /// <param name="kind">The argument.</param>
    /// <param name="figures">Its figures in one line.</param>
    public void RaiseTo(long length, ProofKind kind, string figures)
    {
        if (length > Length)
        {
            (Length, Kind, _figures) = (length, kind, figures);
        }
    }

    /// <summary>Notes that no layout is as short as a length.</summary>
    private void RuleOut(long length, ProofKind kind, string figures)
    {
        Debug.Assert(length >= Length, "A bound is lowered.");
        (Length, Kind, _figures) = (length + 1, kind, figures);
    }
}
