using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The sums of extents that the copies left can make across a box and along it. No row holds more than the greatest sum that fits
/// it (Christofides and Whitlock 1977).</summary>
internal sealed class LeftSums
{
    private readonly BoxContents _box;
    private readonly int[] _left;

    // The copies left as one number: each kind's count times its own radix.
    private readonly long[] _radix;
    private readonly SubsetSums _rows;
    private readonly SubsetSums _columns;
    private readonly SubsetSums _positions;

    /// <summary>Sizes everything once, and forms the sums of all copies.</summary>
    /// <param name="box">The rectangles and the box.</param>
    /// <param name="left">Copies left of each kind, which the search changes; all of them now.</param>
    public LeftSums(BoxContents box, int[] left)
    {
        (_box, _left) = (box, left);
        long states = 1;
        _radix = new long[left.Length];
        for (var kind = 0; kind < left.Length; kind++)
        {
            // Beyond what 31 bits hold the sums of states are not kept, so that numbers may repeat.
            (_radix[kind], states) = (states, Math.Min(states * (left[kind] + 1), int.MaxValue));
        }

        _rows = new SubsetSums(box.Width, states);
        _columns = new SubsetSums(box.Height, states);
        _positions = new SubsetSums(box.Width, 1);
        Tally();
        _positions.Recall(0);
        Form(_positions, box.Across, box.Along);
    }

    /// <summary>The greatest width up to a length that copies left fill side by side.</summary>
    /// <param name="length">Room across, from 0 to the box's width.</param>
    /// <returns>At most the length; the rest of the room is waste in every layout that goes on from here.</returns>
    public int Across(int length) => _rows.Greatest(length);

    /// <summary>The greatest height up to a length that copies left fill one upon the other.</summary>
    /// <param name="length">Room along, from 0 to the box's height.</param>
    /// <returns>At most the length.</returns>
    public int Along(int length) => _columns.Greatest(length);

    /// <summary>Whether a left edge can lie there in a layout that is pushed left as far as it goes, of all copies.</summary>
    /// <param name="x">A left edge, from 0 to the box's width.</param>
    /// <returns>False where no sum of extents ends. It is asked of all copies, not of those left: what is laid pushes
    /// too.</returns>
    public bool IsPosition(int x) => _positions.Holds(x);

    /// <summary>Turns to the sums of the copies that are left now; the steps that this took: none where they were kept.</summary>
    public int Tally()
    {
        long state = 0;
        for (var kind = 0; kind < _left.Length; kind++)
        {
            Debug.Assert(_left[kind] >= 0 && _left[kind] <= _box.Count[kind], "More copies are laid than there are.");
            state += _left[kind] * _radix[kind];
        }

        var steps = 0;
        if (!_rows.Recall(state))
        {
            steps += Form(_rows, _box.Across, _box.Along);
        }

        if (!_columns.Recall(state))
        {
            steps += Form(_columns, _box.Along, _box.Across);
        }

        return steps;
    }

    /// <summary>Forms the sums of the copies left, each with either extent where it may turn; the steps that this took.</summary>
    /// <param name="sums">Takes the sums.</param>
    /// <param name="extent">Extent of each kind as it is given.</param>
    /// <param name="turned">Its extent when turned by a quarter.</param>
    private int Form(SubsetSums sums, int[] extent, int[] turned)
    {
        var steps = 0;
        for (var kind = 0; kind < _left.Length; kind++)
        {
            for (int copy = _left[kind]; copy > 0; copy--)
            {
                sums.Add(extent[kind], _box.Turns[kind] ? turned[kind] : extent[kind]);
                steps += sums.StepsToAdd;
            }
        }

        return steps;
    }
}
