using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The weights of a box's rows and of its columns, and whether they rule it out: alone, or both axes together.</summary>
internal sealed class BoxRelaxation
{
    // Operations of a linear program in the time of a step.
    private const int OperationsPerStep = 8;

    // Of the steps that are left, one part in this many goes into all programs at most: of many extents on a fine grid they would take more
    // than the whole search.
    private const int ForPrograms = 8;
    private const long MostSteps = 1L << 50;

    // After this many rounds the weights of both axes hardly change.
    private const int RoundsTogether = 3;

    /// <summary>Finds the weights; when they are not to be solved for, the extents themselves are taken.</summary>
    /// <param name="box">The rectangles and the box.</param>
    /// <param name="solve">Whether the weights are solved for.</param>
    /// <param name="budget">Pays for the linear programs by their operations.</param>
    public BoxRelaxation(BoxContents box, bool solve, StepBudget budget)
    {
        budget.Look();
        var sideways = box.Sideways;
        // Each program may take half of what is left of that.
        long most = Math.Clamp(budget.Limit - budget.Spent, 0, MostSteps) / ForPrograms * OperationsPerStep;
        Rows = AxisWeights.Of(box, solve, most / 2, budget);
        Columns = AxisWeights.Of(sideways, solve, (most - Rows.Work) / 2, budget);
        Figures =
            Rows.Need > Rows.Best[box.Width] * box.Height ? $"the rows' weights need {Rows.Need} of {Rows.Best[box.Width] * box.Height}"
            : Columns.Need > Columns.Best[box.Height] * box.Width
                ? $"the columns' weights need {Columns.Need} of {Columns.Best[box.Height] * box.Width}"
            : null;
        long work = Rows.Work + Columns.Work;
        var (rows, columns) = (Rows, Columns);
        for (var round = 0; solve && Figures is null && round < RoundsTogether && work < most; round++)
        {
            var (otherRows, otherColumns) = (
                AxisWeights.Against(columns, box, (most - work) / 2, budget),
                AxisWeights.Against(rows, sideways, (most - work) / 2, budget)
            );
            Figures = otherRows.RuleOutWith(columns, box) ?? rows.RuleOutWith(otherColumns, box);
            (rows, columns) = (otherRows, otherColumns);
            work += rows.Work + columns.Work;
        }

        budget.Spend(1 + work / OperationsPerStep);
    }

    /// <summary>The weights along the width.</summary>
    public AxisWeights Rows { get; }

    /// <summary>The weights along the height.</summary>
    public AxisWeights Columns { get; }

    /// <summary>The figures with which the box is ruled out; null when it is not.</summary>
    public string? Figures { get; }
}
