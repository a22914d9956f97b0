using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Outlines.Searching;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines;

/// <summary>Takes the best of the bounding boxes' layout, of equal discs in rows, and of bottom-left fills in several orders, then shortens
/// it. Each part is left out where the steps do not suffice for it, so that an answer never waits for one.</summary>
internal sealed class OutlineSearch
{
    // The separation keeps a weight for every pair of copies; more than this would take too much memory, or most of the steps to fill.
    private const int MostCopies = 1_500;
    private const int PairsPerStep = 16;

    // What the parts before the descents may take of all steps: one part in this many.
    private const int ForNoFit = 2;
    private const int ForRows = 4;
    private const int ForFills = 4;

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
        _exact = new ExactTest(copies, budget);
        Best = new Arrangement(copies);
    }

    /// <summary>The shortest layout so far; no two copies overlap.</summary>
    public Arrangement Best { get; }

    /// <summary>Its length.</summary>
    public double Length { get; private set; } = double.PositiveInfinity;

    private bool IsLowest => IsAtBound(Length);

    /// <summary>Takes over a layout of the bounding boxes, which is free of overlaps.</summary>
    public void Start(StripLayout floor)
    {
        foreach (var placement in floor.Placements)
        {
            var (copy, turn) = _copies.Find(placement);
            _current.Put(copy, turn, placement.X, placement.Y);
        }

        Keep(_current);
    }

    /// <summary>Learns how the outlines fit each other; whether the steps suffice for that.</summary>
    public bool Prepare() => _copies.Book.TryMakeAll(_budget, (_budget.Limit - _budget.Spent) / ForNoFit);

    /// <summary>Shortens the layout it started from, after <see cref="Prepare"/>.</summary>
    public void Run(int threads, ulong seed, CancellationToken cancellation)
    {
        var rows = IsLowest ? null : LaidInRows();
        if (rows is not null && IsAtBound(rows.Length))
        {
            Keep(rows);
            return;
        }

        long all = _current.All;
        if (all <= MostCopies && PairsPerStep * all * all <= _budget.Limit)
        {
            Fill();
            if (!IsLowest && !_budget.Exhausted)
            {
                _budget.Spend(new Descents(_copies, _sale, _bound, cancellation).Run(Best, _budget.Limit - _budget.Spent, threads, seed));
                Length = Best.Length;
            }
        }

        // Rows do not lead the search, so it cannot end longer for them.
        if (rows?.Length < Length)
        {
            Keep(rows);
        }
    }

    private bool IsAtBound(double length) => _sale.RungFor((long)length) <= _sale.RungFor(_bound);

    private void Fill()
    {
        var fill = new BottomLeftFill(_copies, _current, _budget);
        var until = _budget.Spent + (_budget.Limit - _budget.Spent) / ForFills;
        var (order, keys) = (new int[_copies.Count], new double[_copies.Count]);
        for (var rule = 0; rule < FillOrder.Rules && _budget.Spent < until && !IsLowest; rule++)
        {
            FillOrder.Write(_copies, rule, keys, order);
            if (fill.Run(order, Length - 1, until) && _exact.IsApart(_current))
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
        if (rows.Steps > (_budget.Limit - _budget.Spent) / ForRows)
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
