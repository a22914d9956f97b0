using CushionService.Nesting.Outlines.NoFit;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Placing;

/// <summary>Asks, pair by pair, whether an arrangement that the search takes for free of overlaps is so in whole numbers.</summary>
/// <remarks>The search works in doubles, with a tolerance; a sliver that it cannot see would fail the
/// audit.</remarks>
internal sealed class ExactTest
{
    private readonly Copies _copies;
    private readonly StepBudget _budget;
    private readonly OutlineOverlap _overlap = new();

    // The corners of the second outline of a pair, moved so that the first one lies where it is stored.
    private readonly GridPoint[] _moved;
    private readonly int[] _order;
    private readonly double[] _lower;

    /// <summary>Sizes everything once.</summary>
    /// <param name="copies">The copies and flaws.</param>
    /// <param name="budget">Pays a step for each pair of edges.</param>
    public ExactTest(Copies copies, StepBudget budget)
    {
        (_copies, _budget) = (copies, budget);
        var most = 0;
        for (var shape = 0; shape < copies.Book.Count; shape++)
        {
            most = Math.Max(most, copies.Book[shape].Corners.Length);
        }

        _moved = new GridPoint[most];
        var all = copies.Count + copies.Flaws.Length;
        (_order, _lower) = (new int[all], new double[all]);
    }

    /// <summary>Whether no two interiors meet. In the order of their lower edges, each is looked at beside those that begin before it
    /// ends.</summary>
    /// <param name="arrangement">Places are whole numbers.</param>
    /// <returns>Whether the arrangement would pass the audit as far as overlaps go; the strip's edges are not looked
    /// at.</returns>
    public bool IsApart(Arrangement arrangement)
    {
        _budget.Spend(1 + arrangement.All);
        for (var index = 0; index < arrangement.All; index++)
        {
            (_order[index], _lower[index]) = (index, arrangement.Y[index]);
        }

        Array.Sort(_lower, _order);
        for (var first = 0; first < arrangement.All; first++)
        {
            var one = _order[first];
            var upper = arrangement.Y[one] + arrangement.Along[one];
            for (var second = first + 1; second < arrangement.All && _lower[second] < upper; second++)
            {
                _budget.Spend(1);
                var other = _order[second];
                // Two flaws may overlap: they are given, and nothing is cut from them.
                if ((one < _copies.Count || other < _copies.Count) && Meet(arrangement, one, other))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Whether the interiors of two copies meet, or those of a copy and a flaw.</summary>
    /// <param name="arrangement">Places are whole numbers.</param>
    /// <param name="copy">Index of a copy or a flaw.</param>
    /// <param name="other">Index of another one.</param>
    /// <returns>False without a look at the edges when the two boxes do not overlap.</returns>
    private bool Meet(Arrangement arrangement, int copy, int other)
    {
        var (one, two) = (_copies.Book[arrangement.Shape[copy]], _copies.Book[arrangement.Shape[other]]);
        var dx = (long)(arrangement.X[other] - arrangement.X[copy]);
        var dy = (long)(arrangement.Y[other] - arrangement.Y[copy]);
        if (dx >= one.Width || -dx >= two.Width || dy >= one.Length || -dy >= two.Length)
        {
            return false;
        }

        // Every edge of one is looked at beside every edge of the other.
        _budget.Spend((long)one.Corners.Length * two.Corners.Length);
        for (var corner = 0; corner < two.Corners.Length; corner++)
        {
            _moved[corner] = new GridPoint(two.Corners[corner].X + dx, two.Corners[corner].Y + dy);
        }

        return _overlap.InteriorsMeet(one.Corners, _moved.AsSpan(0, two.Corners.Length));
    }
}
