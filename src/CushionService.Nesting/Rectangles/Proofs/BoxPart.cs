using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>All copies of some kinds in one box: their relaxations, and an exact search along the box and one across it, which can
/// be run on for more steps at any time.</summary>
internal sealed class BoxPart
{
    private readonly BoxContents _box;
    private readonly BoxRelaxation _relaxation;
    private readonly int _seenLog;
    private readonly StepBudget _budget;
    private BoxSearch? _upright;
    private BoxSearch? _sideways;

    // Steps of the next turn of each search; doubled, so that going back costs at most as much again.
    private long _slice = 1000;

    /// <summary>Sets the box up, and tries its relaxations.</summary>
    /// <param name="grid">The copies.</param>
    /// <param name="kinds">The kinds that are laid; the others are left out, which can only make it
    /// easier.</param>
    /// <param name="height">Height of the box, in units.</param>
    /// <param name="relax">Whether relaxations are solved for.</param>
    /// <param name="seenLog">Binary logarithm of the states that each search remembers.</param>
    /// <param name="budget">Pays for the steps.</param>
    public BoxPart(BoxGrid grid, int[] kinds, int height, bool relax, int seenLog, StepBudget budget)
    {
        (_seenLog, _budget) = (seenLog, budget);
        _box = new BoxContents(
            [.. kinds.Select(kind => grid.Across[kind])],
            [.. kinds.Select(kind => grid.Along[kind])],
            [.. kinds.Select(kind => grid.Set.Turns[kind])],
            [.. kinds.Select(kind => grid.Set.Count[kind])],
            grid.Width,
            height
        );
        _relaxation = new BoxRelaxation(_box, relax, budget);
        Outcome = Figures is null ? BoxOutcome.Unknown : BoxOutcome.Impossible;
    }

    /// <summary>The figures with which a relaxation rules the box out; null when none does.</summary>
    public string? Figures => _relaxation.Figures;

    /// <summary>What is known so far.</summary>
    public BoxOutcome Outcome { get; private set; }

    /// <summary>The search that found a layout.</summary>
    public BoxSearch Finder => FoundSideways ? _sideways! : _upright!;

    /// <summary>Whether the layout was found with the box's axes exchanged.</summary>
    public bool FoundSideways { get; private set; }

    /// <summary>Searches for at most as many steps as are given.</summary>
    /// <param name="steps">Steps to spend.</param>
    public BoxOutcome Run(long steps)
    {
        long stop = _budget.Spent + steps;
        if (Outcome == BoxOutcome.Unknown)
        {
            var (rows, columns) = (_relaxation.Rows, _relaxation.Columns);
            _upright ??= new BoxSearch(_box, rows, columns, _seenLog, _budget);
            _sideways ??= new BoxSearch(_box.Sideways, columns, rows, _seenLog, _budget);
        }

        while (Outcome == BoxOutcome.Unknown && _budget.Spent < stop)
        {
            // Both start anew each time, but remember what they ruled out.
            Outcome = _upright!.Run(Math.Min(_slice, stop - _budget.Spent));
            if (Outcome == BoxOutcome.Unknown && _budget.Spent < stop)
            {
                Outcome = _sideways!.Run(Math.Min(_slice, stop - _budget.Spent));
                FoundSideways = Outcome == BoxOutcome.Found;
            }

            _slice *= 2;
        }

        return Outcome;
    }
}
