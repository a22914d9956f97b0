using System.Numerics;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>States of an exact search that were searched through in vain: the skyline and how many copies of each kind are left. A state
/// that comes again need not be searched again.</summary>
/// <remarks>A proof by exhaustion rests on this memory, so that states are compared in full: a hash only says where to look. Each state is
/// packed into as few bits as the box needs (the number of segments, then each segment's left end and height, then the copies left), which
/// no other state shares. Packed states lie one behind the other in a ring; a newer one replaces an older one of the same slot, and the
/// ring overwrites the oldest. What is forgotten is searched again, which costs steps but never a wrong answer.</remarks>
internal sealed class RuledOutStates
{
    // Words of the ring for each slot: what a skyline of some eight segments takes.
    private const int WordsPerSlot = 4;
    private readonly int _segmentBits;
    private readonly int _xBits;
    private readonly int _yBits;
    private readonly int[] _leftBits;
    private readonly int _mostWords;
    private readonly ulong _hashMask;

    // By depth: the packed state, how many words it takes, and its slot.
    private readonly ulong[] _packed;
    private readonly int[] _words;
    private readonly int[] _slot;

    // By slot: where in all that was ever written its state begins, plus 1; 0 when there is none.
    private readonly long[] _starts;
    private readonly ulong[] _ring;
    private long _written;

    /// <summary>Sizes everything once.</summary>
    /// <param name="width">The right end of every skyline.</param>
    /// <param name="height">The greatest height of a skyline.</param>
    /// <param name="left">Copies of each kind at the start.</param>
    /// <param name="depths">Depths of the search.</param>
    /// <param name="log">Binary logarithm of the number of slots, from 0.</param>
    /// <param name="hashMask">Bits of the hash that count; a test takes them away so that states collide.</param>
    public RuledOutStates(int width, int height, int[] left, int depths, int log, ulong hashMask = ulong.MaxValue)
    {
        int mostSegments = left.Sum() + 3;
        (_segmentBits, _xBits, _yBits) = (BitsFor(mostSegments), BitsFor(width), BitsFor(height));
        _leftBits = Array.ConvertAll(left, BitsFor);
        int mostBits = _segmentBits + mostSegments * (_xBits + _yBits) + _leftBits.Sum();
        _mostWords = mostBits / BitWriter.WordBits + 1;
        (_packed, _words, _slot) = (new ulong[depths * _mostWords], new int[depths], new int[depths]);
        _starts = new long[1 << log];

        // No slot points into the ring before something is written there, so that it need not be cleared.
        _ring = GC.AllocateUninitializedArray<ulong>(Math.Max(WordsPerSlot << log, 2 * _mostWords));
        _hashMask = hashMask;
    }

    /// <summary>Number of slots.</summary>
    public int Slots => _starts.Length;

    /// <summary>Packs the state of a depth, and tells whether it was ruled out before.</summary>
    /// <param name="depth">The depth; its packed state is kept for <see cref="Add"/>.</param>
    /// <param name="skylines">Holds the skyline.</param>
    /// <param name="at">Where the skyline begins in its arrays.</param>
    /// <param name="segments">Number of its segments.</param>
    /// <param name="left">Copies left of each kind.</param>
    public bool Holds(int depth, BoxSkylines skylines, int at, int segments, int[] left)
    {
        Pack(depth, skylines, at, segments, left);
        var state = _packed.AsSpan(depth * _mostWords, _words[depth]);
        _slot[depth] = (int)(Hash(state) & _hashMask & (ulong)(_starts.Length - 1));
        long start = _starts[_slot[depth]] - 1;

        // What the ring has overwritten since is forgotten. The number of segments comes first: equal states are equally long.
        return start >= 0
            && start + _ring.Length >= _written
            && state.SequenceEqual(_ring.AsSpan((int)(start % _ring.Length)).Slice(0, Math.Min(state.Length, Rest(start))));
    }

    /// <summary>Notes that the state packed last at a depth was searched through in vain.</summary>
    public void Add(int depth)
    {
        int words = _words[depth];
        if (words > Rest(_written))
        {
            // A state lies in one stretch: the rest of the ring stays as it is.
            _written += Rest(_written);
        }

        _packed.AsSpan(depth * _mostWords, words).CopyTo(_ring.AsSpan((int)(_written % _ring.Length)));
        _starts[_slot[depth]] = _written + 1;
        _written += words;
    }

    /// <summary>Words from a place to the end of the ring.</summary>
    private int Rest(long place) => _ring.Length - (int)(place % _ring.Length);

    /// <summary>Packs a state into the words of its depth.</summary>
    private void Pack(int depth, BoxSkylines skylines, int at, int segments, int[] left)
    {
        var writer = new BitWriter(_packed.AsSpan(depth * _mostWords, _mostWords));
        writer.Write(segments, _segmentBits);
        for (var segment = 0; segment < segments; segment++)
        {
            writer.Write(skylines.X[at + segment], _xBits);
            writer.Write(skylines.Y[at + segment], _yBits);
        }

        for (var kind = 0; kind < left.Length; kind++)
        {
            writer.Write(left[kind], _leftBits[kind]);
        }

        _words[depth] = writer.Close();
    }

    /// <summary>Mixes the words, each with the multiplier of MurmurHash3's last step.</summary>
    private static ulong Hash(ReadOnlySpan<ulong> state)
    {
        var hash = 0x9E3779B97F4A7C15UL;
        foreach (ulong word in state)
        {
            hash = (hash ^ word) * 0xFF51AFD7ED558CCDUL;
            hash ^= hash >> 32;
        }

        return hash;
    }

    /// <summary>Bits of a number from 0 to a greatest one.</summary>
    private static int BitsFor(int most) => BitOperations.Log2((uint)Math.Max(most, 1)) + 1;
}
