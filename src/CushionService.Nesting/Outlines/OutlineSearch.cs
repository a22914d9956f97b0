using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Outlines.Searching;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines;

/// <summary>Takes the best of the bounding boxes' layout and of bottom-left fills in several orders, and of equal
/// discs in rows, then shortens it.</summary>
internal sealed class OutlineSearch
{
    // The search keeps a weight for every pair; beyond this the bounding boxes' layout stands.
    private const int MostOutlines = 1500;

    // Likewise where to learn how outlines fit each other would take far longer than the search itself.
    private const long OperationsPerStep = 16;

    private readonly Copies _copies;
    private readonly SaleLadder _sale;
    private readonly long _bound;
    private readonly StepBudget _budget;
    private readonly Arrangement _current;
    private readonly ExactTest _exact;

    public OutlineSearch(Copies copies, SaleLadder sale, long bound, StepBudget budget)
    {
        (_copies, _sale, _bound, _budget) = (copies, sale, bound, budget);
        _current = new Arrangement(copies);
        _exact = new ExactTest(copies);
        Best = new Arrangement(copies);
    }

    /// <summary>The shortest layout so far; no two copies overlap.</summary>
    public Arrangement Best { get; }

    /// <summary>Its length.</summary>
    public double Length { get; private set; } = double.PositiveInfinity;

    private bool IsLowest => _sale.RungFor((long)Length) <= _sale.RungFor(_bound);

    public void Run(StripLayout floor, int threads, CancellationToken cancellation)
    {
        foreach (var placement in floor.Placements)
        {
            var (copy, turn) = _copies.Find(placement);
            _current.Put(copy, turn, placement.X, placement.Y);
        }

        Keep(_current);
        if (_current.All > MostOutlines || !_copies.Book.IsMadeWithin(OperationsPerStep * _budget.Limit))
        {
            return;
        }

        Fill();
        var rows = IsLowest ? null : LaidInRows();
        if (rows is not null && _sale.RungFor((long)rows.Length) <= _sale.RungFor(_bound))
        {
            Keep(rows);
            return;
        }

        if (!IsLowest && !_budget.Exhausted)
        {
            _budget.Spend(new Descents(_copies, _sale, _bound, cancellation).Run(Best, _budget.Limit - _budget.Spent, threads));
            Length = Best.Length;
        }

        // Rows do not lead the search, so it cannot end longer for them.
        if (rows?.Length < Length)
        {
            Keep(rows);
        }
    }

    private void Fill()
    {
        var fill = new BottomLeftFill(_copies, _current, _budget);
        var (order, keys) = (new int[_copies.Count], new double[_copies.Count]);
        for (var rule = 0; rule < 3 && 4 * _budget.Spent <= _budget.Limit && !IsLowest; rule++)
        {
            for (var copy = 0; copy < order.Length; copy++)
            {
                var shape = _copies.TurnsOf(copy)[0].Shape;
                order[copy] = copy;
                keys[copy] = -(
                    rule == 0 ? _copies.Areas[copy]
                    : rule == 1 ? _copies.Along[shape]
                    : _copies.Across[shape]
                );
            }

            Array.Sort(keys, order);
            if (fill.Run(order, Length - 1) && _exact.IsApart(_current))
            {
                Keep(_current);
            }
        }
    }

    /// <summary>Equal discs in rows; null for other pieces, or when there are too few steps.</summary>
    private Arrangement? LaidInRows()
    {
        if (!DiscRows.CanLay(_copies))
        {
            return null;
        }

        var rows = new DiscRows(_copies);
        if (rows.Steps > (_budget.Limit - _budget.Spent) / 4)
        {
            return null;
        }

        _budget.Spend(rows.Steps);
        var laid = new Arrangement(_copies);
        rows.Run(laid);
        return _exact.IsApart(laid) ? laid : null;
    }

    private void Keep(Arrangement arrangement)
    {
        Best.CopyFrom(arrangement);
        Length = arrangement.Length;
    }
}
