using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using CushionService.Nesting.Outlines.NoFit;

namespace CushionService.Nesting.Outlines.Placing;

/// <summary>The forbidden intervals of one copy on one line, from all others. The tables of the no-fit polygons are larger than a
/// cache, so they are read in stages, each a loop of reads that do not wait for each other.</summary>
/// <param name="copies">The copies and flaws.</param>
/// <param name="arrangement">Where they lie.</param>
/// <param name="weights">What overlaps weigh, by copy and other.</param>
internal sealed class LineIntervals(Copies copies, Arrangement arrangement, double[] weights)
{
    // Of each other copy that the line comes near: its number, the slab guessed for it, the offset on
    // the fixed axis, and where that slab ends.
    private readonly int[] _near = new int[arrangement.All];
    private readonly int[] _guess = new int[arrangement.All];
    private readonly double[] _offset = new double[arrangement.All];
    private readonly double[] _end = new double[arrangement.All];

    /// <summary>Number of intervals gathered; the arrays go on with empty ones up to a multiple of
    /// four.</summary>
    public int Count { get; private set; }

    /// <summary>Where each interval begins.</summary>
    public double[] Low { get; private set; } = new double[64];

    /// <summary>Where each interval ends.</summary>
    public double[] High { get; private set; } = new double[64];

    /// <summary>What the overlap with the other copy weighs.</summary>
    public double[] Weight { get; private set; } = new double[64];

    /// <summary>How far the way out is at a right angle to the line, at most.</summary>
    public double[] Cap { get; private set; } = new double[64];

    /// <summary>Collects the intervals that reach between 0 and <paramref name="room"/>.</summary>
    /// <param name="copy">The copy that slides.</param>
    /// <param name="shape">The shape it lies in.</param>
    /// <param name="column">Whether the line runs along the strip, at a fixed x; otherwise across, at a fixed y.</param>
    /// <param name="t">The fixed coordinate.</param>
    /// <param name="room">The largest coordinate on the line.</param>
    public void Gather(int copy, int shape, bool column, double t, double room)
    {
        var count = 0;
        var around = copies.Book.Around(shape);
        // First stage: who is near. Second: guesses, which read one table each. Third: the slabs
        // themselves.
        var near = FindNear(copy, column ? copies.Across[shape] : copies.Along[shape], column, t);
        for (var index = 0; index < near; index++)
        {
            var lying = arrangement.Shape[_near[index]];
            var pair = around[lying] ?? copies.Book.Pair(lying, shape);
            var offset = lying <= shape ? _offset[index] : -_offset[index];
            _guess[index] = (column ? pair.Columns : pair.Rows).Guess(offset, out _end[index]);
        }

        var along = column ? arrangement.Y : arrangement.X;
        var (extent, extents) = column ? (copies.Across[shape], arrangement.Across) : (copies.Along[shape], arrangement.Along);
        var row = copy * arrangement.All;
        for (var index = 0; index < near; index++)
        {
            var other = _near[index];
            var lying = arrangement.Shape[other];
            var slices = column ? around[lying]!.Columns : around[lying]!.Rows;
            var sign = lying <= shape ? 1.0 : -1.0;
            var offset = sign * _offset[index];
            ref readonly var slab = ref slices.From(_guess[index], _end[index], offset);
            var distance = offset - slab.Start;
            var wayOut = double.MinNative(_offset[index] + extent, extents[other] - _offset[index]);
            if (count + slab.Count + slab.AtStart + 4 > Low.Length)
            {
                Grow();
            }

            var (start, weight) = (along[other], weights[row + other]);
            if (slab.Count == 1 && distance != 0)
            {
                count = Add(slab.Band, count, start, sign, distance, room, weight, wayOut);
                continue;
            }

            foreach (ref readonly var band in slices.Bands(slab, distance))
            {
                count = Add(band, count, start, sign, distance, room, weight, wayOut);
            }
        }

        Count = count;
        for (var pad = Count; (pad & 3) != 0; pad++)
        {
            (Low[pad], High[pad], Weight[pad], Cap[pad]) = (0, 0, 0, 1);
        }
    }

    /// <summary>Adds an interval if it reaches between 0 and the room; the new count. Room was made for it.</summary>
    /// <param name="band">The interval in offsets.</param>
    /// <param name="count">Number of intervals so far.</param>
    /// <param name="start">Place of the other copy on the line.</param>
    /// <param name="sign">−1 where the other copy is the one that moves in the no-fit polygon.</param>
    /// <param name="distance">From the start of the slab.</param>
    /// <param name="room">The largest coordinate on the line.</param>
    /// <param name="weight">What the overlap weighs.</param>
    /// <param name="wayOut">How far the way out is at a right angle, at most.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int Add(in Band band, int count, double start, double sign, double distance, double room, double weight, double wayOut)
    {
        var (one, two) = (sign * band.LowAt(distance), sign * band.HighAt(distance));
        var low = start + double.MinNative(one, two) + SliceIndex.Tolerance;
        var high = start + double.MaxNative(one, two) - SliceIndex.Tolerance;
        (Low[count], High[count], Weight[count], Cap[count]) = (low, high, weight, wayOut);
        return high > 0 && low < room ? count + 1 : count;
    }

    /// <summary>Collects the others that the line passes close enough to meet.</summary>
    /// <param name="copy">The copy that slides.</param>
    /// <param name="extent">Its extent on the fixed axis.</param>
    /// <param name="column">Whether the line runs along the strip.</param>
    /// <param name="t">The fixed coordinate.</param>
    /// <returns>How many were found.</returns>
    private int FindNear(int copy, double extent, bool column, double t)
    {
        var count = 0;
        ref var across = ref MemoryMarshal.GetArrayDataReference(column ? arrangement.X : arrangement.Y);
        ref var extents = ref MemoryMarshal.GetArrayDataReference(column ? arrangement.Across : arrangement.Along);
        var (line, reach) = (Vector256.Create(t), Vector256.Create(-extent));
        for (var block = 0; block < arrangement.All; block += 4)
        {
            var offsets = line - Vector256.LoadUnsafe(ref across, (nuint)block);
            var near = Vector256.GreaterThan(offsets, reach) & Vector256.LessThan(offsets, Vector256.LoadUnsafe(ref extents, (nuint)block));
            for (var bits = near.ExtractMostSignificantBits(); bits != 0; bits &= bits - 1)
            {
                var other = block + BitOperations.TrailingZeroCount(bits);
                if (other != copy)
                {
                    (_near[count], _offset[count]) = (other, t - Unsafe.Add(ref across, other));
                    count++;
                }
            }
        }

        return count;
    }

    /// <summary>Makes room for more intervals; after the first lines it has enough.</summary>
    private void Grow()
    {
        var size = 2 * Low.Length;
        Low = Grown(Low, size);
        High = Grown(High, size);
        Weight = Grown(Weight, size);
        Cap = Grown(Cap, size);
    }

    /// <summary>A longer array with the same beginning.</summary>
    private static double[] Grown(double[] array, int size)
    {
        Array.Resize(ref array, size);
        return array;
    }
}
