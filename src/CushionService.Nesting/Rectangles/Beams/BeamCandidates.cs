using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>The moves of a whole layer that compete, and their order: sorted by their bits, digit by digit, since a third of a beam's
/// time would go into comparing them.</summary>
/// <param name="most">The most candidates of a layer.</param>
internal sealed class BeamCandidates(int most)
{
    private const int DigitBits = 8;
    private const int Digits = 1 << DigitBits;
    private const int ScoreBits = 32;

    // State and move of each candidate, in the order in which they came.
    private readonly ulong[] _moves = new ulong[most];

    // Of each candidate its score, in bits that sort as the scores do, and its place in that order; and room to sort them.
    private ulong[] _keys = new ulong[most];
    private ulong[] _sorted = new ulong[most];
    private readonly int[] _ends = new int[Digits];

    /// <summary>How many there are.</summary>
    public int Count { get; private set; }

    /// <summary>State and code of the move of a candidate, after <see cref="Sort"/> from the best on.</summary>
    public (int State, int Move) this[int index]
    {
        get
        {
            ulong move = _moves[(uint)_keys[index]];
            return ((int)(move >> ScoreBits), (int)(uint)move);
        }
    }

    /// <summary>Forgets all.</summary>
    public void Clear() => Count = 0;

    /// <summary>Adds a candidate.</summary>
    /// <param name="score">The lower the better; it counts as a number of 32 bits.</param>
    /// <param name="state">The state that the move goes on from.</param>
    /// <param name="move">Its <see cref="BeamMove.Code"/>.</param>
    public void Add(double score, int state, int move)
    {
        Debug.Assert(double.IsFinite(score), "A score is a number.");
        // Minus 0 becomes 0.
        int bits = BitConverter.SingleToInt32Bits((float)score + 0f);
        // Negative numbers are below the others, and the further from 0 the lower.
        uint rank = bits < 0 ? ~(uint)bits : (uint)bits | 0x8000_0000;
        _keys[Count] = ((ulong)rank << ScoreBits) | (uint)Count;
        _moves[Count++] = ((ulong)(uint)state << ScoreBits) | (uint)move;
    }

    /// <summary>Puts the best first; equals stay in the order in which they came.</summary>
    public void Sort()
    {
        for (var shift = ScoreBits; shift < 2 * ScoreBits; shift += DigitBits)
        {
            if (Spread(_keys.AsSpan(0, Count), _sorted, shift))
            {
                (_keys, _sorted) = (_sorted, _keys);
            }
        }
    }

    /// <summary>Orders the keys by one digit, equals as they came.</summary>
    /// <param name="keys">The keys.</param>
    /// <param name="sorted">Takes them in order.</param>
    /// <param name="shift">Where the digit begins.</param>
    /// <returns>False where they all have the same digit, and stay as they are.</returns>
    private bool Spread(ReadOnlySpan<ulong> keys, ulong[] sorted, int shift)
    {
        Array.Clear(_ends);
        foreach (ulong key in keys)
        {
            _ends[(byte)(key >> shift)]++;
        }

        if (keys.Length == 0 || _ends[(byte)(keys[0] >> shift)] == keys.Length)
        {
            return false;
        }

        for (int digit = 0, end = 0; digit < Digits; digit++)
        {
            (_ends[digit], end) = (end, end + _ends[digit]);
        }

        foreach (ulong key in keys)
        {
            sorted[_ends[(byte)(key >> shift)]++] = key;
        }

        return true;
    }
}
