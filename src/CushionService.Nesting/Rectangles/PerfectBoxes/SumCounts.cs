using System.Numerics;

namespace CushionService.Nesting.Rectangles.PerfectBoxes;

/// <summary>In how many ways the copies left add up to each length, in rows of which each has a copy less than the one before: the product
/// of (1 + x^extent) over all copies, divided by the factor of each copy that is laid. A stretch cannot be filled further than the
/// greatest sum that has a way (Christofides and Whitlock 1977).</summary>
/// <remarks>Ways are counted to 2^32 and begin anew there. A sum whose ways are a multiple of that is missed, which may cost a layout and
/// never a proof.</remarks>
internal sealed class SumCounts
{
    private readonly int[] _extent;
    private readonly int[] _other;
    private readonly int _stride;
    private readonly uint[] _ways;

    /// <summary>Sizes everything once, and counts the ways of all copies in the first row.</summary>
    /// <param name="extent">Extent of each kind.</param>
    /// <param name="other">Its extent when turned; the same where it may not turn.</param>
    /// <param name="count">Copies of each kind.</param>
    /// <param name="limit">The greatest sum.</param>
    public SumCounts(int[] extent, int[] other, int[] count, int limit)
    {
        (_extent, _other, _stride) = (extent, other, limit + 1);
        _ways = new uint[_stride * (count.Sum() + 1)];
        _ways[0] = 1;
        for (var kind = 0; kind < extent.Length; kind++)
        {
            for (var copy = 0; copy < count[kind]; copy++)
            {
                Add(extent[kind], other[kind]);
            }
        }
    }

    /// <summary>The greatest sum up to a length.</summary>
    /// <param name="row">How many copies are laid.</param>
    /// <param name="length">From 0 to the limit.</param>
    /// <returns>At least 0, which is the sum of no copies.</returns>
    public int Greatest(int row, int length)
    {
        int at = row * _stride;
        while (_ways[at + length] == 0 && length > 0)
        {
            length--;
        }

        return length;
    }

    /// <summary>Writes a row: the one before it, less a copy.</summary>
    /// <param name="row">From 1.</param>
    /// <param name="kind">Kind of the copy.</param>
    public void Write(int row, int kind)
    {
        var from = _ways.AsSpan((row - 1) * _stride, _stride);
        var to = _ways.AsSpan(row * _stride, _stride);
        int near = Math.Min(Math.Min(_extent[kind], _other[kind]), _stride);
        int far = Math.Min(Math.Max(_extent[kind], _other[kind]), _stride);
        from[..near].CopyTo(to);

        // From the nearer extent on its ways are taken off, from the farther on those of both. What is read is written already: a
        // vector's width behind, or one by one.
        int sum = near;
        int once = near == far ? _stride : far;
        for (; near >= Vector<uint>.Count && sum + Vector<uint>.Count <= once; sum += Vector<uint>.Count)
        {
            (new Vector<uint>(from[sum..]) - new Vector<uint>(to[(sum - near)..])).CopyTo(to[sum..]);
        }

        for (; sum < once; sum++)
        {
            to[sum] = from[sum] - to[sum - near];
        }

        for (; near >= Vector<uint>.Count && sum + Vector<uint>.Count <= _stride; sum += Vector<uint>.Count)
        {
            var taken = new Vector<uint>(to[(sum - near)..]) + new Vector<uint>(to[(sum - far)..]);
            (new Vector<uint>(from[sum..]) - taken).CopyTo(to[sum..]);
        }

        for (; sum < _stride; sum++)
        {
            to[sum] = from[sum] - to[sum - near] - to[sum - far];
        }
    }

    /// <summary>Multiplies the first row by the factor of one copy.</summary>
    private void Add(int extent, int other)
    {
        for (int sum = _stride - 1; sum >= Math.Min(extent, other); sum--)
        {
            _ways[sum] += (sum >= extent ? _ways[sum - extent] : 0) + (other != extent && sum >= other ? _ways[sum - other] : 0);
        }
    }
}
