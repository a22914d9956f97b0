using CushionService.Nesting.Rectangles.Proofs;

namespace CushionService.Nesting.Rectangles;

/// <summary>Closes the gap between a layout and a bound, from both ends, until they stand on the same saleable length or the
/// steps are spent: passes, dual feasible functions and the bar relaxation, then turns of local search and exact search.</summary>
internal sealed class StripSearch
{
    private const int MostCopiesForProof = 60;
    private readonly RectangleSet _set;
    private readonly SaleLadder _sale;
    private readonly StepBudget _budget;
    private long _lastBarred = -1;

    public StripSearch(RectangleSet set, SaleLadder sale, StepBudget budget)
    {
        (_set, _sale, _budget) = (set, sale, budget);
        Layouts = new OrderSearch(set, sale, budget);
        Bound = Math.Max((set.Area + set.Width - 1) / set.Width, set.LongestAtLeast());
        Proof = ProofKind.Area;
        ProofFigures = Bound == set.LongestAtLeast() ? $"a piece is {Bound} long" : $"area {set.Area} over width {set.Width}";
    }

    /// <summary>The best layout.</summary>
    public OrderSearch Layouts { get; }

    /// <summary>A length that no layout can beat, and why.</summary>
    public long Bound { get; private set; }

    /// <inheritdoc cref="Bound"/>
    public ProofKind Proof { get; private set; }

    /// <inheritdoc cref="Bound"/>
    public string ProofFigures { get; private set; }

    private long Goal => _sale.Reach(_sale.RungFor(Bound));

    private bool Closed => Layouts.Length <= Goal;

    private long Below => _sale.Reach(_sale.RungFor(Layouts.Length) - 1);

    /// <summary>Runs to the end of the steps, or until the rung is proven.</summary>
    public void Run()
    {
        Layouts.Start(Goal);
        if (Closed || _budget.Exhausted)
        {
            return;
        }

        BoxProblem? box = Provable();

        // Few kinds or few copies can be searched through; many different ones are found sooner than ruled out.
        double proving = _set.Kinds <= 10 ? 0.7 : _set.Copies <= 24 ? 0.4 : 0.1;
        for (long share = Math.Max(_budget.Limit / 64, 1); !Closed && !_budget.Exhausted; share *= 4)
        {
            long steps = Math.Min(share, _budget.Limit - _budget.Spent);
            Bar(box);
            Layouts.Improve(Goal, box is null ? steps : (long)(steps * (1 - proving)));
            Bar(box);
            if (!Closed && box is not null)
            {
                Decide(box, (long)(steps * proving));
            }
        }
    }

    private BoxProblem? Provable()
    {
        if (_set.Copies > MostCopiesForProof)
        {
            return null;
        }

        var grid = new BoxGrid(_set);
        return grid.IsFine ? new BoxProblem(grid, _budget) : null;
    }

    /// <summary>Tries to rule out the next lower rung without a search.</summary>
    private void Bar(BoxProblem? box)
    {
        if (Closed || Below == _lastBarred)
        {
            return;
        }

        _lastBarred = Below;
        if (new DualFeasible(_set).RulesOut(Below, _budget) is { } figures)
        {
            RuledOut(ProofKind.DualFeasible, figures);
        }
        else if (box?.RelaxationRulesOut(Below) is { } weights)
        {
            RuledOut(ProofKind.Relaxation, weights);
        }
    }

    private void Decide(BoxProblem box, long steps)
    {
        long length = Below;
        long before = _budget.Spent;
        switch (box.Decide(length, steps))
        {
            case BoxOutcome.Impossible:
                RuledOut(ProofKind.Exhaustive, $"{_budget.Spent - before} steps of search rule out {_set.Width} by {length}");
                break;
            case BoxOutcome.Found:
                Layouts.Adopt(box.X, box.Y, box.Turned);
                break;
            default:
                break;
        }
    }

    private void RuledOut(ProofKind proof, string figures) => (Bound, Proof, ProofFigures) = (Below + 1, proof, figures);
}
