using System.Diagnostics;
using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The lengths up to a limit that some of the remaining copies can fill exactly side by side, as a bit set. A row (or a
/// column) of a free stretch cannot be filled further than the greatest of them (Christofides and Whitlock 1977).
/// What remains is named by a state number; the sets of the states met are kept where the states are few.</summary>
internal sealed class SubsetSums
{
    // Two megabytes: the sets of all states are kept up to here, one set beyond.
    private const long MostWords = 1 << 18;

    // Words that are written at once, and in the time of a step.
    private const int Lanes = 4;
    private const int WordsPerStep = 8;
    private readonly int _words;
    private readonly ulong[] _bits;
    private readonly bool[] _known;
    private int _from;

    /// <summary>Sizes everything once.</summary>
    /// <param name="limit">The greatest length.</param>
    /// <param name="states">Number of states that may be asked for.</param>
    public SubsetSums(int limit, long states)
    {
        _words = limit / 64 + 1;
        int kept = states * _words <= MostWords ? (int)states : 1;
        _bits = new ulong[kept * _words];
        _known = new bool[kept];
    }

    /// <summary>Steps of allowing one more copy.</summary>
    public int StepsToAdd => 1 + (_words / WordsPerStep);

    /// <summary>Turns to the set of a state. Returns whether it is known already; if not, it starts with nothing but 0.</summary>
    /// <param name="state">From 0, below the number of states.</param>
    public bool Recall(long state)
    {
        int slot = state < _known.Length ? (int)state : 0;
        _from = slot * _words;
        if (_known[slot] && _known.Length > 1)
        {
            return true;
        }

        _known[slot] = true;
        Array.Clear(_bits, _from, _words);
        _bits[_from] = 1;
        return false;
    }

    /// <summary>Allows one more copy, which fills either extent or none.</summary>
    /// <param name="extent">One extent.</param>
    /// <param name="otherExtent">Another one; the same for a copy that may not turn.</param>
    public void Add(int extent, int otherExtent)
    {
        // Downwards, since each word is made from words at or below it, as they were: a copy counts once.
        int word = _words;
        while (word >= Lanes)
        {
            word -= Lanes;
            var sums = Load(word) | ShiftedLanes(word, extent);
            sums = extent == otherExtent ? sums : sums | ShiftedLanes(word, otherExtent);
            sums.StoreUnsafe(ref MemoryMarshal.GetArrayDataReference(_bits), (nuint)(_from + word));
        }

        while (--word >= 0)
        {
            _bits[_from + word] |= Shifted(word, extent) | Shifted(word, otherExtent);
        }
    }

    /// <summary>The greatest sum that is at most <paramref name="length"/>.</summary>
    /// <returns>At least 0, which is the sum of no copies.</returns>
    public int Greatest(int length)
    {
        Debug.Assert(length >= 0 && length >> 6 < _words, "A length lies outside the set.");
        Debug.Assert((_bits[_from] & 1) != 0, "Nothing at all is no sum any more.");
        int word = length >> 6;
        ulong bits = _bits[_from + word] & (ulong.MaxValue >> (63 - (length & 63)));
        while (bits == 0)
        {
            bits = _bits[_from + --word];
        }

        return (word << 6) + 63 - BitOperations.LeadingZeroCount(bits);
    }

    /// <summary>Whether the length is a sum.</summary>
    public bool Holds(int length) => (_bits[_from + (length >> 6)] >> (length & 63) & 1) != 0;

    private Vector256<ulong> Load(int word) => Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(_bits), (nuint)(_from + word));

    /// <summary>Some words of the set moved up by an extent, from the given one on.</summary>
    private Vector256<ulong> ShiftedLanes(int word, int extent)
    {
        int from = word - (extent >> 6);
        int shift = extent & 63;
        if (from > 0)
        {
            // In two shifts, since one by 64 would be none.
            return (Load(from) << shift) | (Load(from - 1) >>> 1 >>> (63 - shift));
        }

        return from + Lanes <= 0
            ? Vector256<ulong>.Zero
            : Vector256.Create(Shifted(word, extent), Shifted(word + 1, extent), Shifted(word + 2, extent), Shifted(word + 3, extent));
    }

    /// <summary>A word of the set moved up by an extent.</summary>
    private ulong Shifted(int word, int extent)
    {
        int from = word - (extent >> 6);
        int shift = extent & 63;
        if (from < 0)
        {
            return 0;
        }

        ulong bits = _bits[_from + from] << shift;
        return shift > 0 && from > 0 ? bits | (_bits[_from + from - 1] >> (64 - shift)) : bits;
    }
}
