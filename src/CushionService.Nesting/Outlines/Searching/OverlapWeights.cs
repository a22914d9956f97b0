using System.Diagnostics;
using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Searching;

/// <summary>How deep every two copies overlap, and what that weighs: overlaps that persist gain weight, so that a search does not stay
/// where it is stuck (guided local search: Voudouris and Tsang 1999).</summary>
/// <remarks>Both are square tables by copy and other, flaws after the copies, and the same either way round; the rows of flaws are never
/// read.</remarks>
internal sealed class OverlapWeights
{
    /// <summary>How many numbers are added up in the time of a step.</summary>
    private const int StepShare = 8;

    /// <summary>What an overlap's weight grows by in a round, at least.</summary>
    private const double LeastGain = 1.2;

    /// <summary>What the weight of the deepest overlap grows by.</summary>
    private const double MostGain = 2;

    /// <summary>What the weight of a pair that is apart falls by in a round.</summary>
    private const double Decay = 0.95;

    private readonly Copies _copies;
    private readonly Arrangement _arrangement;
    private readonly StepBudget _budget;
    private readonly double[] _first;
    private readonly double[] _depths;

    /// <summary>Sizes everything once.</summary>
    /// <param name="copies">The copies and the flaws.</param>
    /// <param name="arrangement">Where they lie, which the search changes.</param>
    /// <param name="budget">Pays for the steps.</param>
    public OverlapWeights(Copies copies, Arrangement arrangement, StepBudget budget)
    {
        (_copies, _arrangement, _budget) = (copies, arrangement, budget);
        Weights = new double[arrangement.All * arrangement.All];
        _depths = new double[arrangement.All * arrangement.All];
        _first = new double[Weights.Length];
        for (var copy = 0; copy < copies.Count; copy++)
        {
            for (var other = 0; other < arrangement.All; other++)
            {
                // Small pieces find a place later; a flaw weighs as much as the copy itself.
                var area = other < copies.Count ? copies.Areas[other] : copies.Areas[copy];
                _first[copy * arrangement.All + other] = Math.Sqrt(Math.Sqrt(copies.Areas[copy] * area));
            }
        }
    }

    /// <summary>The weight of each pair, above 0 for a copy and any other.</summary>
    public double[] Weights { get; }

    /// <summary>Goes back to the weights of the start: the side of a square as large as the geometric mean of both areas.</summary>
    public void Begin()
    {
        _budget.Spend(Weights.Length / StepShare);
        _first.CopyTo(Weights, 0);
    }

    /// <summary>The weighted depths of a copy's overlaps.</summary>
    /// <param name="copy">Which.</param>
    public double CostOf(int copy)
    {
        _budget.Spend(1 + _arrangement.All / StepShare);
        var cost = 0.0;
        var row = copy * _arrangement.All;
        for (var other = 0; other < _arrangement.All; other++)
        {
            cost += Weights[row + other] * _depths[row + other];
        }

        return cost;
    }

    /// <summary>Measures every pair; the sum of all depths.</summary>
    /// <returns>Grid units; each pair counts once.</returns>
    public double Measure()
    {
        var total = 0.0;
        for (var copy = 0; copy < _copies.Count; copy++)
        {
            Measure(copy);
            for (var other = copy + 1; other < _arrangement.All; other++)
            {
                total += _depths[copy * _arrangement.All + other];
            }
        }

        return total;
    }

    /// <summary>Measures a copy against all others, after it moved.</summary>
    /// <param name="copy">Which.</param>
    public void Measure(int copy)
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
    /// <remarks>An overlap's weight grows by a factor between the least and the most gain, in
    /// proportion to its depth beside the deepest; that of a pair that is apart falls back towards its
    /// first weight.</remarks>
    public double Reweigh()
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

        // Nothing overlaps where the deepest is 0: then the weights are left as they are.
        for (var copy = 0; copy < _copies.Count && deepest > 0; copy++)
        {
            for (var other = copy + 1; other < _arrangement.All; other++)
            {
                var depth = _depths[copy * _arrangement.All + other];
                var weight = Weights[copy * _arrangement.All + other];
                weight =
                    depth > 0
                        ? weight * (LeastGain + (MostGain - LeastGain) * depth / deepest)
                        : Math.Max(_first[copy * _arrangement.All + other], Decay * weight);
                Weights[copy * _arrangement.All + other] = weight;
                Weights[other * _arrangement.All + copy] = weight;
            }
        }

        return total;
    }
}
