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

    /// <summary>Rounds without progress after which the weights begin anew from the best arrangement.</summary>
    private const int Patience = 60;

    /// <summary>Beginnings without progress after which it stops.</summary>
    private const int Strikes = 2;

    /// <summary>How many numbers are added up in the time of a step.</summary>
    private const int StepShare = 8;

    /// <summary>Less than this share of the overlap counts as progress.</summary>
    private const double Progress = 0.98;

    /// <summary>What an overlap's weight grows by in a round: the least, and for the deepest overlap.</summary>
    private const double LeastGain = 1.2;
    private const double MostGain = 2;

    /// <summary>What the weight of a pair that is apart falls by in a round.</summary>
    private const double Decay = 0.95;

    private readonly Copies _copies;
    private readonly Arrangement _arrangement;
    private readonly StepBudget _budget;
    private readonly double[] _weights;
    private readonly double[] _firstWeights;
    private readonly double[] _depths;
    private readonly PlaceSearch _places;
    private readonly Arrangement _least;
    private readonly int[] _order;

    public Separation(Copies copies, Arrangement arrangement, StepBudget budget)
    {
        (_copies, _arrangement, _budget) = (copies, arrangement, budget);
        _weights = new double[arrangement.All * arrangement.All];
        _depths = new double[arrangement.All * arrangement.All];
        _places = new PlaceSearch(copies, arrangement, new LineSearch(copies, arrangement, _weights, budget), _weights, budget);
        _least = new Arrangement(copies);
        _order = new int[copies.Count];
        _firstWeights = new double[_weights.Length];
        for (var copy = 0; copy < copies.Count; copy++)
        {
            for (var other = 0; other < arrangement.All; other++)
            {
                // Small pieces find a place later; a flaw weighs as much as the copy itself.
                var area = other < copies.Count ? copies.Areas[other] : copies.Areas[copy];
                _firstWeights[copy * arrangement.All + other] = Math.Sqrt(Math.Sqrt(copies.Areas[copy] * area));
            }
        }
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

    private double Pull(double length, ref Xorshift random)
    {
        _budget.Spend(_weights.Length / StepShare);
        _firstWeights.CopyTo(_weights, 0);
        var least = Measure();
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
                var total = Reweigh();
                if (total == 0)
                {
                    return 0;
                }

                if (total < least)
                {
                    idle = total < Progress * least ? -1 : idle;
                    least = total;
                    _least.CopyFrom(_arrangement);
                }
            }

            _arrangement.CopyFrom(_least);
            Measure();
            if (least < Progress * atStart)
            {
                strike = -1;
            }
        }

        return least;
    }

    /// <summary>Every copy that overlaps moves once, in a random order.</summary>
    private void MoveAll(double length, ref Xorshift random)
    {
        var count = 0;
        for (var copy = 0; copy < _copies.Count; copy++)
        {
            if (CostOf(copy) > 0)
            {
                _order[count++] = copy;
            }
        }

        for (var index = 0; index < count && !_budget.Exhausted; index++)
        {
            var pick = index + random.Next(count - index);
            (_order[index], _order[pick]) = (_order[pick], _order[index]);
            var copy = _order[index];
            var cost = CostOf(copy);
            if (cost == 0)
            {
                continue;
            }

            if (_places.Improve(copy, length, cost, Samples, ref random))
            {
                _arrangement.Put(copy, _places.Turn, _places.X, _places.Y);
                MeasureOne(copy);
            }
        }
    }

    /// <summary>The weighted depths of a copy's overlaps.</summary>
    private double CostOf(int copy)
    {
        _budget.Spend(1 + _arrangement.All / StepShare);
        var cost = 0.0;
        var row = copy * _arrangement.All;
        for (var other = 0; other < _arrangement.All; other++)
        {
            cost += _weights[row + other] * _depths[row + other];
        }

        return cost;
    }

    /// <summary>Measures every pair; the sum of all depths.</summary>
    private double Measure()
    {
        var total = 0.0;
        for (var copy = 0; copy < _copies.Count; copy++)
        {
            MeasureOne(copy);
            for (var other = copy + 1; other < _arrangement.All; other++)
            {
                total += _depths[copy * _arrangement.All + other];
            }
        }

        return total;
    }

    /// <summary>Measures a copy against all others, after it moved.</summary>
    private void MeasureOne(int copy)
    {
        _budget.Spend(1 + _arrangement.All / 2);
        for (var other = 0; other < _arrangement.All; other++)
        {
            if (other != copy)
            {
                var depth = _arrangement.Depth(copy, other);
                Debug.Assert(depth >= 0 && double.IsFinite(depth), "a depth is a length");
                _depths[copy * _arrangement.All + other] = depth;
                _depths[other * _arrangement.All + copy] = depth;
            }
        }
    }

    /// <summary>Overlaps gain weight, the deepest most; others lose it slowly. Returns the total depth.</summary>
    private double Reweigh()
    {
        _budget.Spend((long)_arrangement.All * _arrangement.All / StepShare);
        var (total, deepest) = (0.0, 0.0);
        for (var copy = 0; copy < _copies.Count; copy++)
        {
            for (var other = copy + 1; other < _arrangement.All; other++)
            {
                var depth = _depths[copy * _arrangement.All + other];
                total += depth;
                deepest = Math.Max(deepest, depth);
            }
        }

        for (var copy = 0; copy < _copies.Count && deepest > 0; copy++)
        {
            for (var other = copy + 1; other < _arrangement.All; other++)
            {
                var depth = _depths[copy * _arrangement.All + other];
                var weight = _weights[copy * _arrangement.All + other];
                weight =
                    depth > 0
                        ? weight * (LeastGain + (MostGain - LeastGain) * depth / deepest)
                        : Math.Max(_firstWeights[copy * _arrangement.All + other], Decay * weight);
                _weights[copy * _arrangement.All + other] = weight;
                _weights[other * _arrangement.All + copy] = weight;
            }
        }

        return total;
    }
}
