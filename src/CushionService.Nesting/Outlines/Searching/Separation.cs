using System.Diagnostics;
using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Searching;

/// <summary>Pulls overlapping copies apart within a given length: guided local search over weighted overlaps. Every
/// overlapping copy moves to where it overlaps less; overlaps that persist gain weight
/// (Egeblad, Nielsen and Odgaard 2007; Umetani et al. 2009; Gardeyn and Wauters, arXiv 2509.13329).</summary>
internal sealed class Separation
{
    /// <summary>Random places that a copy tries beside its own.</summary>
    private const int Samples = 1;

    /// <summary>Rounds without progress after which the search goes back to the best arrangement, with the weights that
    /// have grown.</summary>
    private const int Patience = 60;

    /// <summary>Times that it goes back without progress, after which it stops.</summary>
    private const int Strikes = 2;

    /// <summary>Less than this share of the overlap counts as progress.</summary>
    private const double Progress = 0.98;

    private readonly Copies _copies;
    private readonly Arrangement _arrangement;
    private readonly StepBudget _budget;
    private readonly OverlapWeights _overlaps;
    private readonly PlaceSearch _places;
    private readonly Arrangement _least;
    private readonly int[] _order;

    /// <summary>Sizes everything once.</summary>
    /// <param name="copies">The copies and flaws.</param>
    /// <param name="arrangement">What is pulled apart, in place.</param>
    /// <param name="budget">Pays for all moves.</param>
    public Separation(Copies copies, Arrangement arrangement, StepBudget budget)
    {
        (_copies, _arrangement, _budget) = (copies, arrangement, budget);
        _overlaps = new OverlapWeights(copies, arrangement, budget);
        var lines = new LineSearch(copies, arrangement, _overlaps.Weights, budget);
        _places = new PlaceSearch(copies, arrangement, lines, _overlaps.Weights, budget);
        _least = new Arrangement(copies);
        _order = new int[copies.Count];
    }

    /// <summary>The sum of all depths after a run, grid units; 0 when the copies are apart.</summary>
    public double Overlap { get; private set; }

    /// <summary>Moves copies until they are apart, or until many rounds have not helped.</summary>
    /// <param name="length">The length within which all copies lie, before and after; grid units.</param>
    /// <param name="random">The order of moves, and places to look at.</param>
    /// <returns>Whether the copies are apart; if not, they are left where they overlapped least.</returns>
    public bool Run(double length, ref Xorshift random)
    {
        Debug.Assert(_arrangement.Length <= length, "every copy lies within the length");
        Overlap = Pull(length, ref random);
        Debug.Assert(_arrangement.Length <= length, "no move leaves the length");
        return Overlap == 0;
    }

    /// <summary>Rounds of moves with growing weights, until all are apart; returns the least overlap
    /// that was met.</summary>
    private double Pull(double length, ref Xorshift random)
    {
        _overlaps.Begin();
        var least = _overlaps.Measure();
        if (least == 0)
        {
            return 0;
        }

        _least.CopyFrom(_arrangement);
        for (var strike = 0; strike < Strikes && !_budget.Exhausted; strike++)
        {
            var atStart = least;
            for (var idle = 0; idle < Patience && !_budget.Exhausted; idle++)
            {
                MoveAll(length, ref random);
                var total = _overlaps.Reweigh();
                if (total == 0)
                {
                    return 0;
                }

                // Less overlap than ever is kept; only a clear step counts as progress, or tiny ones would go on for
                // ever.
                if (total < least)
                {
                    idle = total < Progress * least ? -1 : idle;
                    least = total;
                    _least.CopyFrom(_arrangement);
                }
            }

            // Back to the best, with the weights as they have grown: the next beginning leaves it another way.
            _arrangement.CopyFrom(_least);
            _overlaps.Measure();
            if (least < Progress * atStart)
            {
                strike = -1;
            }
        }

        return least;
    }

    /// <summary>Every copy that overlaps moves once, in a random order.</summary>
    /// <param name="length">Where every copy must end, grid units.</param>
    /// <param name="random">The order, and places to look at.</param>
    private void MoveAll(double length, ref Xorshift random)
    {
        var count = 0;
        for (var copy = 0; copy < _copies.Count; copy++)
        {
            if (_overlaps.CostOf(copy) > 0)
            {
                _order[count++] = copy;
            }
        }

        for (var index = 0; index < count && !_budget.Exhausted; index++)
        {
            // A shuffle as it goes (Fisher and Yates), so that no copy is always first.
            var pick = index + random.Next(count - index);
            (_order[index], _order[pick]) = (_order[pick], _order[index]);
            var copy = _order[index];
            var cost = _overlaps.CostOf(copy);
            if (cost == 0)
            {
                continue;
            }

            if (_places.Improve(copy, length, cost, Samples, ref random))
            {
                _arrangement.Put(copy, _places.Turn, _places.X, _places.Y);
                _overlaps.Measure(copy);
            }
        }
    }
}
