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
    private const int ForRows = 4;
    private const int ForFills = 4;

    // And the share of learning how the outlines fit each other. With less, a page that waits is shown the boxes of outlines that it has
    // the steps to interlock.
    private const double ForNoFit = 0.6;

    private readonly Copies _copies;
    private readonly SaleLadder _sale;
    private readonly long _bound;
    private readonly StepBudget _budget;

    // What a part works on; the best is copied from it.
    private readonly Arrangement _current;
    private readonly ExactTest _exact;

    /// <summary>A search that has no layout yet.</summary>
    /// <param name="copies">The copies and flaws.</param>
    /// <param name="sale">The lengths that can be bought.</param>
    /// <param name="bound">A length that no layout can beat, in grid units.</param>
    /// <param name="budget">Pays for all parts.</param>
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
    /// <remarks>Whole grid units; infinite before <see cref="Start"/>.</remarks>
    public double Length { get; private set; } = double.PositiveInfinity;

    private bool IsLowest => IsAtBound(Length);

    /// <summary>Takes over a layout of the bounding boxes, which is free of overlaps.</summary>
    /// <param name="floor">Its placements name copies and turns of the problem.</param>
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
    /// <remarks>Three fifths of the steps that are left may go into this.</remarks>
    public bool Prepare() => _copies.Book.TryMakeAll(_budget, (long)(ForNoFit * (_budget.Limit - _budget.Spent)));

    /// <summary>Shortens the layout it started from, after <see cref="Prepare"/>.</summary>
    /// <param name="threads">1 or 2; the answer is the same.</param>
    /// <param name="seed">Begins the chances.</param>
    /// <param name="cancellation">Observed at least every 20 ms of work.</param>
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

    /// <summary>Whether a length is sold as the bound is, so that nothing shorter could be
    /// sold.</summary>
    private bool IsAtBound(double length) => _sale.RungFor((long)length) <= _sale.RungFor(_bound);

    /// <summary>Bottom-left fills, each aiming below the best so far.</summary>
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

    /// <summary>Takes over an arrangement that is free of overlaps as the best.</summary>
    private void Keep(Arrangement arrangement)
    {
        Best.CopyFrom(arrangement);
        Length = arrangement.Length;
    }
}
