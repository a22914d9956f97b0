using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Searching;

/// <summary>One way down from a first layout, with chances of its own: asks again and again for a little less length and pulls apart the
/// overlaps that this makes. It shares nothing that it writes to with others, so that they may run at the same time.</summary>
internal sealed class Descent
{
    /// <summary>The share of the length that is asked for at first.</summary>
    private const double FirstShrink = 0.02;
    private const double LeastShrink = 0.001;
    private const int FailsBeforeRest = 2;

    private readonly SaleLadder _sale;
    private readonly long _bound;
    private readonly StepBudget _budget;
    private readonly Arrangement _current;
    private readonly Separation _separation;
    private readonly Squeeze _squeeze;
    private readonly ExactTest _exact;
    private double _shrink = FirstShrink;
    private int _fails;
    private Xorshift _random;

    public Descent(Copies copies, Arrangement start, SaleLadder sale, long bound, StepBudget budget, ulong seed)
    {
        (_sale, _bound, _budget, _random) = (sale, bound, budget, new Xorshift(seed));
        (Best, Length, _current) = (new Arrangement(copies), start.Length, new Arrangement(copies));
        Best.CopyFrom(start);
        (_separation, _squeeze, _exact) = (new(copies, _current, budget), new(copies, _current), new(copies));
    }

    /// <summary>The shortest layout that it found; no two copies overlap.</summary>
    public Arrangement Best { get; }

    /// <summary>Its length.</summary>
    public double Length { get; private set; }

    /// <summary>Whether nothing shorter could be sold.</summary>
    public bool IsLowest => _sale.RungFor((long)Length) <= _sale.RungFor(_bound);

    /// <summary>Steps that it has spent so far.</summary>
    public long Spent => _budget.Spent;

    /// <summary>Goes on until so many steps are spent in all, its budget is used up, or nothing shorter could be sold.</summary>
    /// <param name="until">The steps.</param>
    /// <param name="goOn">Asked before every try.</param>
    public void Run(long until, Func<bool> goOn)
    {
        _current.CopyFrom(Best);
        while (_budget.Spent < until && !_budget.Exhausted && !IsLowest && goOn())
        {
            // To measure every pair is work too, and counts even when nothing needs to move.
            _budget.Spend(1 + (long)_current.All * _current.All / 4);
            var target = NextTarget();
            if (!_squeeze.Into(target, ref _random))
            {
                return;
            }

            if (_separation.Run(target, ref _random) && _exact.IsApart(_current))
            {
                Best.CopyFrom(_current);
                (Length, _fails) = (_current.Length, 0);
                continue;
            }

            if (++_fails % FailsBeforeRest == 0)
            {
                _shrink = Math.Max(LeastShrink, _shrink / 2);
                _current.CopyFrom(Best);
            }

            _squeeze.Swap(target, ref _random);
        }
    }

    /// <summary>The longest layout that is the wanted share shorter and can be bought cheaper.</summary>
    private long NextTarget()
    {
        var wanted = Math.Max(_bound, (long)(Length * (1 - _shrink)));
        return _sale.Reach(Math.Min(_sale.RungFor(wanted), _sale.RungFor((long)Length) - 1));
    }
}
