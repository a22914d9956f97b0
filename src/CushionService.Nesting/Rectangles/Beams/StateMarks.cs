using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>Tells whether a layer already holds a state of the same skyline and the same copies left, by 64-bit hashes: a rare
/// clash costs one partial layout, never a wrong answer.</summary>
internal sealed class StateMarks
{
    // Open addressing with at most a quarter of the places taken; 0 is an empty place.
    private readonly ulong[] _table;
    private readonly ulong[] _salt;

    /// <summary>Sizes the table once.</summary>
    /// <param name="states">The most states of a layer.</param>
    /// <param name="kinds">Kinds of the order; each has a factor of its own.</param>
    public StateMarks(int states, int kinds)
    {
        _table = new ulong[(int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)states * 4)];
        _salt = KindSalts.Of(kinds);
    }

    /// <summary>What a copy of a kind adds to the hash of the copies left.</summary>
    public ulong Salt(int kind) => _salt[kind];

    /// <summary>Forgets every state.</summary>
    public void Clear() => Array.Clear(_table);

    /// <summary>Marks a state; false when its like was there.</summary>
    /// <param name="layer">Holds the state.</param>
    /// <param name="state">Which one.</param>
    /// <remarks>Unlike the exact search, a beam proves nothing, so that the hash alone may
    /// decide.</remarks>
    public bool Add(BeamLayer layer, int state)
    {
        ulong hash = 0xCBF29CE484222325UL;
        int at = state * layer.Stride;
        for (var segment = 0; segment < layer.Segments[state]; segment++)
        {
            hash = (hash ^ (ulong)(layer.X[at + segment] * 1_000_003 + layer.Y[at + segment])) * 0x9E3779B97F4A7C15UL;
            hash ^= hash >> 29;
        }

        hash = Math.Max(hash + layer.LeftHash[state], 1);
        int slot = (int)(hash >> 40) & (_table.Length - 1);
        for (; _table[slot] != 0; slot = (slot + 1) & (_table.Length - 1))
        {
            if (_table[slot] == hash)
            {
                return false;
            }
        }

        _table[slot] = hash;
        return true;
    }
}
