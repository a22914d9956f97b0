namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The lengths up to a limit that some of the remaining copies can fill exactly side by side, as a bit set. A row (or a
/// column) of a free stretch cannot be filled further than the greatest of them (Christofides and Whitlock 1977).</summary>
internal sealed class SubsetSums
{
    private readonly ulong[] _bits;

    public SubsetSums(int limit)
    {
        Limit = limit;
        _bits = new ulong[limit / 64 + 1];
    }

    /// <summary>The greatest length asked for.</summary>
    public int Limit { get; }

    /// <summary>Starts again with nothing but 0.</summary>
    public void Clear()
    {
        Array.Clear(_bits);
        _bits[0] = 1;
    }

    /// <summary>Allows one more copy, which fills either extent or none.</summary>
    public void Add(int extent, int otherExtent)
    {
        int last = _bits.Length - 1;
        for (int word = last; word >= 0; word--)
        {
            _bits[word] |= Shifted(word, extent) | Shifted(word, otherExtent);
        }
    }

    /// <summary>The greatest sum that is at most <paramref name="length"/>.</summary>
    public int Greatest(int length)
    {
        int word = length >> 6;
        ulong bits = _bits[word] & (ulong.MaxValue >> (63 - (length & 63)));
        while (bits == 0)
        {
            bits = _bits[--word];
        }

        return (word << 6) + 63 - System.Numerics.BitOperations.LeadingZeroCount(bits);
    }

    /// <summary>Whether the length is a sum.</summary>
    public bool Holds(int length) => (_bits[length >> 6] >> (length & 63) & 1) != 0;

    // Reads only words at or below the one that is being written, downwards, so that a copy counts once. An extent of 0 adds nothing.
    private ulong Shifted(int word, int extent)
    {
        int from = word - (extent >> 6);
        int shift = extent & 63;
        if (from < 0)
        {
            return 0;
        }

        ulong bits = _bits[from] << shift;
        return shift > 0 && from > 0 ? bits | (_bits[from - 1] >> (64 - shift)) : bits;
    }
}
