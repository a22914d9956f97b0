using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.PerfectBoxes;

/// <summary>States that were searched through in vain, by 64-bit hashes in a table of fixed size; a newer state replaces an older one.
/// A clash may hide a layout, which a search that proves nothing can afford.</summary>
internal sealed class FailedStates
{
    private readonly ulong[] _keys;
    private readonly ulong[] _salt;

    /// <param name="log">Binary logarithm of the number of states.</param>
    /// <param name="kinds">Number of kinds.</param>
    public FailedStates(int log, int kinds)
    {
        _keys = new ulong[1 << log];
        _salt = Array.ConvertAll(KindSalts.Of(kinds), salt => salt | 1);
    }

    /// <summary>The hash of a skyline and the copies left; never 0.</summary>
    /// <param name="skylines">Holds the skyline.</param>
    /// <param name="at">Where it begins.</param>
    /// <param name="segments">Its segments.</param>
    /// <param name="left">Sum of <see cref="Salt"/> over the copies left.</param>
    public static ulong Key(BoxSkylines skylines, int at, int segments, ulong left)
    {
        ulong key = 0xCBF29CE484222325UL;
        for (var segment = 0; segment < segments; segment++)
        {
            key = (key ^ (((ulong)(uint)skylines.X[at + segment] << 32) | (uint)skylines.Y[at + segment])) * 0x9E3779B97F4A7C15UL;
            key ^= key >> 29;
        }

        return (key + left) | 1;
    }

    /// <summary>What a copy of a kind adds to the sum of the copies left.</summary>
    public ulong Salt(int kind) => _salt[kind];

    /// <summary>Whether a state is known to fail.</summary>
    /// <param name="key">What <see cref="Key"/> gave.</param>
    public bool Holds(ulong key) => _keys[Slot(key)] == key;

    /// <summary>Notes that a state fails.</summary>
    /// <param name="key">What <see cref="Key"/> gave.</param>
    public void Add(ulong key) => _keys[Slot(key)] = key;

    /// <summary>The place of a key: bits that the last mixing has reached.</summary>
    private int Slot(ulong key) => (int)(key >> 32) & (_keys.Length - 1);
}
