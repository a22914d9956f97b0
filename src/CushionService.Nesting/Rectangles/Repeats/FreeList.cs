using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>Free rectangles, edge by edge in flat arrays, so that four of them are compared at once.</summary>
/// <remarks>Their order is kept. The arrays are longer than the list by a vector, so that the last ones are read whole; what is read beyond
/// the list is left out. They grow, are kept, and so allocate only until they have met their largest order.</remarks>
internal sealed class FreeList
{
    /// <summary>How many rectangles are compared at once: a step.</summary>
    public const int Lanes = 4;

    private long[] _left = new long[64];
    private long[] _lower = new long[64];
    private long[] _right = new long[64];
    private long[] _upper = new long[64];

    /// <summary>How many there are.</summary>
    public int Count { get; private set; }

    /// <summary>The steps of comparing each once.</summary>
    public int Steps => (Count + Lanes - 1) / Lanes;

    /// <summary>A rectangle of the list.</summary>
    /// <param name="at">From 0 up to less than <see cref="Count"/>.</param>
    public FreeRectangle this[int at] => new(_left[at], _lower[at], _right[at], _upper[at]);

    /// <summary>Empties the list.</summary>
    public void Clear() => Count = 0;

    /// <summary>Appends a rectangle.</summary>
    public void Add(in FreeRectangle free)
    {
        if (Count + Lanes >= _left.Length)
        {
            int length = 2 * _left.Length;
            Array.Resize(ref _left, length);
            Array.Resize(ref _lower, length);
            Array.Resize(ref _right, length);
            Array.Resize(ref _upper, length);
        }

        Put(Count++, free);
    }

    /// <summary>The first rectangle, at or after a place of the list, that has room.</summary>
    /// <param name="from">The place, at least 0.</param>
    /// <param name="across">The least width.</param>
    /// <param name="along">The least height.</param>
    /// <param name="highest">It begins no higher than this.</param>
    /// <returns>Its place; -1 when there is none.</returns>
    public int NextRoom(int from, long across, long along, long highest)
    {
        var (wide, high, low) = (Vector256.Create(across), Vector256.Create(along), Vector256.Create(highest));
        for (; from < Count; from += Lanes)
        {
            var lower = Load(_lower, from);
            var fits =
                Vector256.GreaterThanOrEqual(Load(_right, from) - Load(_left, from), wide)
                & Vector256.GreaterThanOrEqual(Load(_upper, from) - lower, high)
                & Vector256.LessThanOrEqual(lower, low);
            uint lanes = fits.ExtractMostSignificantBits();
            if (lanes != 0)
            {
                int at = from + BitOperations.TrailingZeroCount(lanes);
                return at < Count ? at : -1;
            }
        }

        return -1;
    }

    /// <summary>Whether a rectangle lies within any of the list.</summary>
    public bool Covers(in FreeRectangle part)
    {
        var (left, lower) = (Vector256.Create(part.Left), Vector256.Create(part.Lower));
        var (right, upper) = (Vector256.Create(part.Right), Vector256.Create(part.Upper));
        for (var from = 0; from < Count; from += Lanes)
        {
            var holds =
                Vector256.LessThanOrEqual(Load(_left, from), left)
                & Vector256.LessThanOrEqual(right, Load(_right, from))
                & Vector256.LessThanOrEqual(Load(_lower, from), lower)
                & Vector256.LessThanOrEqual(upper, Load(_upper, from));
            uint lanes = holds.ExtractMostSignificantBits();
            if (lanes != 0)
            {
                return from + BitOperations.TrailingZeroCount(lanes) < Count;
            }
        }

        return false;
    }

    /// <summary>Moves what shares area with a rectangle to another list, which is emptied before.</summary>
    /// <param name="taken">The rectangle.</param>
    /// <param name="met">Gets what shares area with it, in the order of this list.</param>
    public void MoveMet(in FreeRectangle taken, FreeList met)
    {
        met.Clear();
        var (left, lower) = (Vector256.Create(taken.Left), Vector256.Create(taken.Lower));
        var (right, upper) = (Vector256.Create(taken.Right), Vector256.Create(taken.Upper));
        var kept = 0;
        for (var from = 0; from < Count; from += Lanes)
        {
            var (lefts, lowers) = (Load(_left, from), Load(_lower, from));
            var (rights, uppers) = (Load(_right, from), Load(_upper, from));
            var meets =
                Vector256.LessThan(lefts, right)
                & Vector256.LessThan(left, rights)
                & Vector256.LessThan(lowers, upper)
                & Vector256.LessThan(lower, uppers);
            uint lanes = meets.ExtractMostSignificantBits();
            int within = Math.Min(Lanes, Count - from);
            if (lanes == 0 && within == Lanes)
            {
                Store(lefts, _left, kept);
                Store(lowers, _lower, kept);
                Store(rights, _right, kept);
                Store(uppers, _upper, kept);
                kept += Lanes;
                continue;
            }

            for (var lane = 0; lane < within; lane++)
            {
                FreeRectangle free = this[from + lane];
                if ((lanes >> lane & 1) != 0)
                {
                    met.Add(free);
                }
                else
                {
                    Put(kept++, free);
                }
            }
        }

        Count = kept;
    }

    private void Put(int at, in FreeRectangle free) =>
        (_left[at], _lower[at], _right[at], _upper[at]) = (free.Left, free.Lower, free.Right, free.Upper);

    private static Vector256<long> Load(long[] edges, int from) =>
        Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(edges), (nuint)from);

    private static void Store(Vector256<long> lanes, long[] edges, int at) =>
        lanes.StoreUnsafe(ref MemoryMarshal.GetArrayDataReference(edges), (nuint)at);
}
