using System.Diagnostics;
using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Searching;

/// <summary>One way down from a first layout, with chances of its own, in two phases (Gardeyn and Wauters, arXiv 2509.13329). To explore,
/// it takes some length away and pulls the overlaps apart; where that fails, it goes on from a near miss, two copies exchanged. To
/// compress, it takes very little away, always from the best layout. It shares nothing that it writes to with others, so that they may run
/// at the same time.</summary>
internal sealed class Descent
{
    /// <summary>The share of the length that is taken away at first, while exploring.</summary>
    private const double FirstShrink = 0.04;

    /// <summary>The share to which exploring and the start of compressing come down.</summary>
    private const double LeastShrink = 0.001;

    /// <summary>The share at the end of compressing.</summary>
    private const double LastShrink = 0.0001;

    /// <summary>After this many failures the share is halved.</summary>
    private const int FailsBeforeLess = 3;

    private readonly SaleLadder _sale;
    private readonly long _bound;
    private readonly StepBudget _budget;

    // The arrangement that is pulled apart; it may overlap, and what works on it is made for it once.
    private readonly Arrangement _current;
    private readonly Separation _separation;
    private readonly Shortening _shortening;
    private readonly NearMisses _misses;
    private readonly ExactTest _exact;
    private double _shrink = FirstShrink;
    private int _fails;
    private Xorshift _random;

    /// <summary>A descent from a layout.</summary>
    /// <param name="copies">The copies and flaws.</param>
    /// <param name="start">A layout without overlaps; copied.</param>
    /// <param name="sale">The lengths that can be bought.</param>
    /// <param name="bound">A length that no layout can beat, in grid units.</param>
    /// <param name="budget">Its own steps.</param>
    /// <param name="seed">Begins its chances.</param>
    public Descent(Copies copies, Arrangement start, SaleLadder sale, long bound, StepBudget budget, ulong seed)
    {
        (_sale, _bound, _budget, _random) = (sale, bound, budget, new Xorshift(seed));
        (Best, Length, _current) = (new Arrangement(copies), start.Length, new Arrangement(copies));
        Best.CopyFrom(start);
        (_separation, _shortening) = (new(copies, _current, budget), new(copies, _current));
        (_misses, _exact) = (new(copies), new(copies, budget));
    }

    /// <summary>The shortest layout that it found; no two copies overlap.</summary>
    public Arrangement Best { get; }

    /// <summary>Its length.</summary>
    public double Length { get; private set; }

    /// <summary>Whether nothing shorter could be sold.</summary>
    public bool IsLowest => _sale.RungFor((long)Length) <= _sale.RungFor(_bound);

    /// <summary>Steps that it has spent so far.</summary>
    public long Spent => _budget.Spent;

    /// <summary>Looks for other arrangements, until the given steps are spent in all, its budget is used up, or nothing shorter could be
    /// sold.</summary>
    /// <param name="until">The steps.</param>
    /// <param name="goOn">Asked before every try.</param>
    public void Explore(long until, Func<bool> goOn)
    {
        for (var fromBest = true; MayTry(until, goOn); )
        {
            if (fromBest)
            {
                _current.CopyFrom(Best);
                _misses.Clear();
            }

            var target = Target(_shrink);
            if (!_shortening.CutTo(target, ref _random))
            {
                return;
            }

            fromBest = Apart(target);
            if (fromBest)
            {
                continue;
            }

            if (++_fails % FailsBeforeLess == 0 && _shrink > LeastShrink)
            {
                _shrink = Math.Max(LeastShrink, _shrink / 2);
                fromBest = true;
                continue;
            }

            // Where only whole numbers see an overlap, there is no depth to compare.
            if (_separation.Overlap > 0)
            {
                _misses.Add(_current, _separation.Overlap);
                _current.CopyFrom(_misses.Pick(ref _random));
            }

            _shortening.Exchange(target, ref _random);
        }
    }

    /// <summary>Takes less and less away from the best layout, with the same ends as <see cref="Explore"/>.</summary>
    /// <param name="until">The steps.</param>
    /// <param name="goOn">Asked before every try.</param>
    public void Compress(long until, Func<bool> goOn)
    {
        var start = _budget.Spent;
        while (MayTry(until, goOn))
        {
            var passed = Math.Min(1, (_budget.Spent - start) / (double)Math.Max(1, until - start));
            _current.CopyFrom(Best);
            var target = Target(LeastShrink * Math.Pow(LastShrink / LeastShrink, passed));
            if (!_shortening.CutTo(target, ref _random))
            {
                return;
            }

            Apart(target);
        }
    }

    /// <summary>Whether another try may begin; pays for beginning it.</summary>
    private bool MayTry(long until, Func<bool> goOn)
    {
        if (_budget.Spent >= until || _budget.Exhausted || IsLowest || !goOn())
        {
            return false;
        }

        // To copy and to cut is work too, and counts even when nothing needs to move.
        _budget.Spend(1 + _current.All);
        return true;
    }

    /// <summary>Whether the copies come apart within the target; if so, that is the best layout.</summary>
    /// <param name="target">Where all copies must end, grid units.</param>
    private bool Apart(double target)
    {
        if (!_separation.Run(target, ref _random) || !_exact.IsApart(_current))
        {
            return false;
        }

        Debug.Assert(_current.Length <= target && target < Length, "a separated arrangement is shorter than the best");
        Best.CopyFrom(_current);
        (Length, _fails) = (_current.Length, 0);
        return true;
    }

    /// <summary>A length that is the wanted share shorter, at least a unit, not below the bound.</summary>
    /// <param name="shrink">A share of the length, from 0 to 1.</param>
    private double Target(double shrink) => Math.Max(_bound, Math.Min(Length - 1, Math.Floor(Length * (1 - shrink))));
}
