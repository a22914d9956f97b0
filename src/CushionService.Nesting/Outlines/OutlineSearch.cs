using CushionService.Nesting.Rectangles;

namespace CushionService.Nesting.Outlines;

/// <summary>Shortens a layout: takes the best of the bounding boxes' layout and of bottom-left fills in several orders, then
/// asks again and again for a little less length and pulls apart the overlaps that this makes.</summary>
internal sealed class OutlineSearch
{
    private const ulong Seed = 20;
    private const double FirstShrink = 0.02;
    private const double LeastShrink = 0.002;
    private const int FailsBeforeRest = 2;

    private readonly Copies _copies;
    private readonly SaleLadder _sale;
    private readonly long _bound;
    private readonly StepBudget _budget;
    private readonly Arrangement _current;
    private readonly Squeeze _squeeze;
    private readonly ExactTest _exact;
    private Xorshift _random = new(Seed);

    public OutlineSearch(Copies copies, SaleLadder sale, long bound, StepBudget budget)
    {
        (_copies, _sale, _bound, _budget) = (copies, sale, bound, budget);
        _current = new Arrangement(copies);
        _squeeze = new Squeeze(copies, _current);
        _exact = new ExactTest(copies);
        Best = new Arrangement(copies);
    }

    /// <summary>The shortest layout so far; no two copies overlap.</summary>
    public Arrangement Best { get; }

    /// <summary>Its length.</summary>
    public double Length { get; private set; } = double.PositiveInfinity;

    private bool IsLowest => _sale.RungFor((long)Length) <= _sale.RungFor(_bound);

    public void Run(StripLayout floor)
    {
        foreach (var placement in floor.Placements)
        {
            var (copy, turn) = _copies.Find(placement);
            _current.Put(copy, turn, placement.X, placement.Y);
        }

        Keep();
        Fill();
        if (!IsLowest && !_budget.Exhausted)
        {
            Shorten();
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
                keys[copy] = -(rule == 0 ? _copies.Areas[copy] : rule == 1 ? _copies.Along[shape] : _copies.Across[shape]);
            }

            Array.Sort(keys, order);
            if (fill.Run(order, Length - 1) && _exact.IsApart(_current))
            {
                Keep();
            }
        }
    }

    private void Shorten()
    {
        var separation = new Separation(_copies, _current, _budget);
        var (shrink, fails) = (FirstShrink, 0);
        _current.CopyFrom(Best);
        while (!_budget.Exhausted && !IsLowest)
        {
            var target = NextTarget(shrink);
            if (!_squeeze.Into(target, ref _random))
            {
                return;
            }

            if (separation.Run(target, ref _random) && _exact.IsApart(_current))
            {
                Keep();
                fails = 0;
                continue;
            }

            if (++fails % FailsBeforeRest == 0)
            {
                shrink = Math.Max(LeastShrink, shrink / 2);
                _current.CopyFrom(Best);
            }

            _squeeze.Swap(target, ref _random);
        }
    }

    private void Keep()
    {
        Best.CopyFrom(_current);
        Length = _current.Length;
    }

    /// <summary>The longest layout that is a given share shorter and can be bought cheaper.</summary>
    private long NextTarget(double shrink)
    {
        var wanted = Math.Max(_bound, (long)(Length * (1 - shrink)));
        return _sale.Reach(Math.Min(_sale.RungFor(wanted), _sale.RungFor((long)Length) - 1));
    }
}
