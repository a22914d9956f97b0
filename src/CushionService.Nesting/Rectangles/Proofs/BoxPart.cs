namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>All copies of some kinds in one box: their relaxations, and an exact search along the box and one across it, which can
/// be run on for more steps at any time.</summary>
internal sealed class BoxPart
{
    private const int StepsPerWeight = 400;
    private const int RoundsTogether = 3;
    private readonly BoxSearch _upright;
    private readonly BoxSearch _sideways;
    private readonly StepBudget _budget;
    private long _slice = 1000;

    public BoxPart(BoxGrid grid, int[] kinds, int height, bool relax, int seenLog, StepBudget budget)
    {
        _budget = budget;
        int[] across = [.. kinds.Select(kind => grid.Across[kind])];
        int[] along = [.. kinds.Select(kind => grid.Along[kind])];
        int[] count = [.. kinds.Select(kind => grid.Set.Count[kind])];
        bool[] turns = [.. kinds.Select(kind => grid.Set.Turns[kind])];
        var rows = AxisWeights.Of(across, along, turns, count, grid.Width, relax);
        var columns = AxisWeights.Of(along, across, turns, count, height, relax);
        Figures = rows.Need > rows.Best[grid.Width] * height
            ? $"the rows' weights need {rows.Need} of {rows.Best[grid.Width] * height}"
            : columns.Need > columns.Best[height] * grid.Width
            ? $"the columns' weights need {columns.Need} of {columns.Best[height] * grid.Width}"
            : null;
        var (fromRows, fromColumns) = (rows, columns);
        for (var round = 0; relax && Figures is null && round < RoundsTogether; round++)
        {
            var otherColumns = AxisWeights.Against(fromRows, along, across, turns, count, height);
            var otherRows = AxisWeights.Against(fromColumns, across, along, turns, count, grid.Width);
            Figures = otherRows.RuleOutWith(fromColumns, across, along, turns, count)
                ?? fromRows.RuleOutWith(otherColumns, across, along, turns, count);
            (fromRows, fromColumns) = (otherRows, otherColumns);
        }

        budget.Spend(relax ? StepsPerWeight * kinds.Length : 1);
        _upright = new BoxSearch(across, along, turns, count, grid.Width, height, rows, columns, budget, seenLog);
        _sideways = new BoxSearch(along, across, turns, count, height, grid.Width, columns, rows, budget, seenLog);
        Outcome = Figures is null ? BoxOutcome.Unknown : BoxOutcome.Impossible;
    }

    /// <summary>The figures by which a relaxation rules the box out; null when none does.</summary>
    public string? Figures { get; }

    /// <summary>What is known so far.</summary>
    public BoxOutcome Outcome { get; private set; }

    /// <summary>The search that found a layout.</summary>
    public BoxSearch Finder => FoundSideways ? _sideways : _upright;

    /// <summary>Whether the layout was found with the box's axes exchanged.</summary>
    public bool FoundSideways { get; private set; }

    /// <summary>Searches for at most so many steps.</summary>
    public BoxOutcome Run(long steps)
    {
        long stop = _budget.Spent + steps;
        while (Outcome == BoxOutcome.Unknown && _budget.Spent < stop)
        {
            // Both start anew each time, but remember what they ruled out.
            Outcome = _upright.Run(Math.Min(_slice, stop - _budget.Spent));
            if (Outcome == BoxOutcome.Unknown && _budget.Spent < stop)
            {
                Outcome = _sideways.Run(Math.Min(_slice, stop - _budget.Spent));
                FoundSideways = Outcome == BoxOutcome.Found;
            }

            _slice *= 2;
        }

        return Outcome;
    }
}
