using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>Local search over the order in which a constrained pass lays the copies. It starts from the rule of thumb (round every
/// aligned cut up to whole repeats), so that its answer is never longer.</summary>
internal sealed class ConstrainedSearch
{
    private readonly RectangleSet _set;
    private readonly SaleLadder _sale;
    private readonly StepBudget _budget;
    private readonly ConstrainedPass _pass;
    private readonly int[] _order;
    private Xorshift _random = new(1);

    public ConstrainedSearch(StripProblem problem, RectangleSet set, StepBudget budget)
    {
        (_set, _sale, _budget) = (set, problem.Sale, budget);
        _pass = new ConstrainedPass(problem, set);
        Layout = new RectangleLayout(set);
        _order = [.. Enumerable.Range(0, set.Copies)];
        bool[] aligned = [.. _order.Select(copy => problem.Pieces[set.PieceOf(copy)].Alignment is not null)];
        long[] keys =
        [
            .. _order.Select(copy => (aligned[copy] ? long.MinValue / 2 : 0) - set.Across[set.KindOf[copy]] * set.Along[set.KindOf[copy]]),
        ];
        Array.Sort(keys, _order);
        RuleOfThumb = _pass.Run(_order, long.MaxValue, true, budget);
        if (RuleOfThumb == long.MaxValue)
        {
            throw new ArgumentException("A piece fits the strip on no phase of the repeat.", nameof(problem));
        }

        Keep(RuleOfThumb);
    }

    /// <summary>The length that the rule of thumb gives.</summary>
    public long RuleOfThumb { get; }

    /// <summary>Length of the best layout.</summary>
    public long Length { get; private set; }

    /// <summary>The best layout.</summary>
    public RectangleLayout Layout { get; }

    /// <summary>Runs until a length at or below the goal is found or the steps are spent.</summary>
    public void Run(long goal)
    {
        long current = _pass.Run(_order, long.MaxValue, false, _budget);
        Keep(current);
        while (Length > goal && !_budget.Exhausted && _order.Length > 1)
        {
            int a = _random.Next(_order.Length);
            int b = _random.Next(_order.Length);
            (_order[a], _order[b]) = (_order[b], _order[a]);

            // Anything up to the end of the rung is as good; what was longer may be kept, so that the search does not stick.
            long limit = Math.Max(current, _sale.Reach(_sale.RungFor(Length)));
            long length = _pass.Run(_order, limit, false, _budget);
            if (length > limit)
            {
                (_order[a], _order[b]) = (_order[b], _order[a]);
                continue;
            }

            current = length;
            Keep(length);
        }
    }

    private void Keep(long length)
    {
        if (Length > 0 && length >= Length)
        {
            return;
        }

        Length = length;
        Layout.CopyFrom(_pass.Layout);
    }
}
