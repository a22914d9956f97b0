using System.Diagnostics;
using System.Numerics;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>The ways in which a copy can be laid in a box: each kind as it is, and turned where it may be, the narrowest first. What is
/// left of a partial layout is a set of bits, so that only what is left and fits a gap's width is ever looked at.</summary>
internal sealed class BeamWays
{
    /// <summary>Bits of a word of a set.</summary>
    public const int WordBits = 64;

    // The narrower and the wider way of each kind.
    private readonly int[] _first;
    private readonly int[] _second;

    /// <summary>Puts the ways in order.</summary>
    /// <param name="across">Extent of each kind across the box.</param>
    /// <param name="along">Extent of each kind along the box.</param>
    /// <param name="turns">Which kinds may turn.</param>
    public BeamWays(long[] across, long[] along, bool[] turns)
    {
        var ways = Enumerable
            .Range(0, across.Length)
            .SelectMany(kind => turns[kind] ? new[] { (Kind: kind, Turned: false), (Kind: kind, Turned: true) } : [(kind, false)])
            .OrderBy(way => way.Turned ? along[way.Kind] : across[way.Kind])
            .ToArray();
        (Kind, Turned) = ([.. ways.Select(way => way.Kind)], [.. ways.Select(way => way.Turned)]);
        Across = [.. ways.Select(way => way.Turned ? along[way.Kind] : across[way.Kind])];
        Along = [.. ways.Select(way => way.Turned ? across[way.Kind] : along[way.Kind])];
        Words = (ways.Length + WordBits - 1) / WordBits;
        (_first, _second) = (new int[across.Length], new int[across.Length]);
        for (var way = 0; way < ways.Length; way++)
        {
            // A kind that may not turn has the same way twice.
            _second[Kind[way]] = way;
        }

        for (int way = ways.Length - 1; way >= 0; way--)
        {
            _first[Kind[way]] = way;
        }
    }

    /// <summary>Kind of each way.</summary>
    public int[] Kind { get; }

    /// <summary>Whether a way lays its kind turned.</summary>
    public bool[] Turned { get; }

    /// <summary>Extent of each way across the box, in the kinds' units, the least first.</summary>
    public long[] Across { get; }

    /// <summary>Extent of each way along the box.</summary>
    public long[] Along { get; }

    /// <summary>Words of a set of ways.</summary>
    public int Words { get; }

    /// <summary>Writes the set of all ways.</summary>
    public void WriteAll(Span<ulong> set)
    {
        set.Clear();
        for (var way = 0; way < Kind.Length; way++)
        {
            set[way / WordBits] |= 1UL << way;
        }
    }

    /// <summary>Takes the ways of a kind out of a set.</summary>
    public void Remove(Span<ulong> set, int kind)
    {
        set[_first[kind] / WordBits] &= ~(1UL << _first[kind]);
        set[_second[kind] / WordBits] &= ~(1UL << _second[kind]);
    }

    /// <summary>The least width of a set that is not empty.</summary>
    public long Narrowest(ReadOnlySpan<ulong> set)
    {
        var word = 0;
        while (set[word] == 0)
        {
            word++;
        }

        return Across[word * WordBits + BitOperations.TrailingZeroCount(set[word])];
    }

    /// <summary>How many ways are at most as wide as a gap.</summary>
    public int UpTo(long extent)
    {
        var (low, high) = (0, Across.Length);
        while (low < high)
        {
            int middle = (low + high) >> 1;
            (low, high) = Across[middle] <= extent ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    /// <summary>The bits of a word of a set that are among the first ways.</summary>
    /// <param name="set">The set.</param>
    /// <param name="word">Index of the word.</param>
    /// <param name="ways">How many ways; more than 64 times the index.</param>
    public static ulong First(ReadOnlySpan<ulong> set, int word, int ways)
    {
        Debug.Assert(ways > word * WordBits, "A word without any of the first ways is not asked for.");
        int more = ways - word * WordBits;
        return more >= WordBits ? set[word] : set[word] & ((1UL << more) - 1);
    }

    /// <summary>Whether any way of a set fits a stretch of the floor.</summary>
    /// <param name="set">The set.</param>
    /// <param name="extent">Width of the stretch.</param>
    /// <param name="room">Height up to the top of the box.</param>
    public bool AnyFits(ReadOnlySpan<ulong> set, long extent, long room)
    {
        int ways = UpTo(extent);
        for (var word = 0; word * WordBits < ways; word++)
        {
            for (ulong bits = First(set, word, ways); bits != 0; bits &= bits - 1)
            {
                if (Along[word * WordBits + BitOperations.TrailingZeroCount(bits)] <= room)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
