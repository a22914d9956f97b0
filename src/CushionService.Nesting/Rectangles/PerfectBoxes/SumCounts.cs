using System.Numerics;
using System.Runtime.Intrinsics;

namespace CushionService.Nesting.Rectangles.PerfectBoxes;

/// <summary>In how many ways the copies left add up to each length, in rows of which each has a copy less than the one before: the product
/// of (1 + x^extent) over all copies, divided by the factor of each copy that is laid. A stretch cannot be filled further than the
/// greatest sum that has a way (Christofides and Whitlock 1977).</summary>
/// <remarks>Ways are counted to 2^32 and begin anew there. A sum whose ways are a multiple of that is missed, which may cost a layout and
/// never a proof.</remarks>
internal sealed class SumCounts
{
    // The lesser and the greater extent of each kind in its turns, at most the stride.
    private readonly int[] _near;
    private readonly int[] _far;
    private readonly int _stride;
    private readonly uint[] _all;
    private readonly uint[] _ways;

    // Of each row, a bit for each sum that has a way: from 64 of them the greatest is found at once.
    private readonly ulong[] _reached;

    /// <summary>Sizes everything once, with a row for each number of copies laid; the first is that of all copies.</summary>
    /// <param name="extent">Extent of each kind.</param>
    /// <param name="other">Its extent when turned; the same where it may not turn.</param>
    /// <param name="count">Copies of each kind.</param>
    /// <param name="limit">The greatest sum.</param>
    public SumCounts(int[] extent, int[] other, int[] count, int limit)
        : this(extent, other, count, limit, count.Sum() + 1) { }

    /// <summary>Sizes everything once, with a number of rows; the first is that of all copies.</summary>
    /// <inheritdoc cref="SumCounts(int[], int[], int[], int)"/>
    /// <param name="extent"></param>
    /// <param name="other"></param>
    /// <param name="count"></param>
    /// <param name="limit"></param>
    /// <param name="rows">Number of rows.</param>
    public SumCounts(int[] extent, int[] other, int[] count, int limit, int rows)
    {
        Limit = limit;
        // Whole words of bits; what is counted beyond the limit is not asked for.
        _stride = (limit / 64 + 1) * 64;
        _near = [.. extent.Select((one, kind) => Math.Min(Math.Min(one, other[kind]), _stride))];
        _far = [.. extent.Select((one, kind) => Math.Min(Math.Max(one, other[kind]), _stride))];
        (_all, _ways, _reached) = (new uint[_stride], new uint[_stride * rows], new ulong[_stride / 64 * rows]);
        _all[0] = 1;
        for (var kind = 0; kind < extent.Length; kind++)
        {
            for (var copy = 0; copy < count[kind]; copy++)
            {
                Add(_near[kind], _far[kind]);
            }
        }

        Begin();
    }

    /// <summary>The greatest sum that is counted.</summary>
    public int Limit { get; }

    /// <summary>Makes the first row that of all copies.</summary>
    public void Begin()
    {
        _all.CopyTo(_ways, 0);
        Mark(0);
    }

    /// <summary>The greatest sum up to a length.</summary>
    /// <param name="row">How many copies are laid.</param>
    /// <param name="length">From 0 to the limit.</param>
    /// <returns>At least 0, which is the sum of no copies.</returns>
    public int Greatest(int row, int length)
    {
        int first = _stride / 64 * row;
        int word = length / 64;
        ulong reached = _reached[first + word] & (ulong.MaxValue >> (63 - length % 64));
        // Ends at 0, the sum of no copies, which every row has in one way.
        while (reached == 0)
        {
            reached = _reached[first + --word];
        }

        return word * 64 + BitOperations.Log2(reached);
    }

    /// <summary>Writes a row: the one before it, less a copy.</summary>
    /// <param name="row">From 1.</param>
    /// <param name="kind">Kind of the copy.</param>
    public void Write(int row, int kind) => Write(row, this, row - 1, kind);

    /// <summary>Makes a row the same as another one.</summary>
    /// <param name="row">The row that is written.</param>
    /// <param name="from">The row that is read.</param>
    public void Copy(int row, int from)
    {
        int words = _stride / 64;
        Array.Copy(_ways, from * _stride, _ways, row * _stride, _stride);
        Array.Copy(_reached, from * words, _reached, row * words, words);
    }

    /// <summary>Writes a row: another one, less a copy.</summary>
    /// <param name="row">The row that is written.</param>
    /// <param name="source">Holds the other row; of the same kinds and limit.</param>
    /// <param name="sourceRow">The other row; not the one that is written.</param>
    /// <param name="kind">Kind of the copy.</param>
    public void Write(int row, SumCounts source, int sourceRow, int kind)
    {
        var from = source._ways.AsSpan(sourceRow * _stride, _stride);
        var to = _ways.AsSpan(row * _stride, _stride);
        var (near, far) = (_near[kind], _far[kind]);
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

        Mark(row);
    }

    /// <summary>Writes the bits of a row.</summary>
    private void Mark(int row)
    {
        ref uint ways = ref _ways[row * _stride];
        var reached = _reached.AsSpan(_stride / 64 * row, _stride / 64);
        for (var word = 0; word < reached.Length; word++)
        {
            ulong none = 0;
            for (var part = 0; part < 64; part += Vector256<uint>.Count)
            {
                var zero = Vector256.Equals(Vector256.LoadUnsafe(ref ways, (nuint)(word * 64 + part)), Vector256<uint>.Zero);
                none |= (ulong)zero.ExtractMostSignificantBits() << part;
            }

            reached[word] = ~none;
        }
    }

    /// <summary>Multiplies the ways of all copies by the factor of one.</summary>
    private void Add(int near, int far)
    {
        for (int sum = _stride - 1; sum >= near; sum--)
        {
            _all[sum] += _all[sum - near] + (far != near && sum >= far ? _all[sum - far] : 0);
        }
    }
}
