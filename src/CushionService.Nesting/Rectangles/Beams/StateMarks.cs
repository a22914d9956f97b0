namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>Tells whether a layer already holds a state of the same skyline and the same copies left, by 64-bit hashes: a rare
/// clash costs one partial layout, never a wrong answer.</summary>
internal sealed class StateMarks
{
    private readonly ulong[] _table;
    private readonly ulong[] _salt;

    public StateMarks(int states, int kinds)
    {
        _table = new ulong[(int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)states * 4)];
        _salt = new ulong[kinds];
        ulong salt = 0;
        for (var kind = 0; kind < kinds; kind++)
        {
            salt += 0x9E3779B97F4A7C15UL;
            _salt[kind] = (salt ^ (salt >> 30)) * 0xBF58476D1CE4E5B9UL;
        }
    }

    /// <summary>Forgets every state.</summary>
    public void Clear() => Array.Clear(_table);

    /// <summary>Marks a state; false when its like was there.</summary>
    public bool Add(BeamLayer layer, int state, ReadOnlySpan<int> left)
    {
        ulong hash = 0xCBF29CE484222325UL;
        int at = state * layer.Stride;
        for (var segment = 0; segment < layer.Segments[state]; segment++)
        {
            hash = (hash ^ (ulong)(layer.X[at + segment] * 1_000_003 + layer.Y[at + segment])) * 0x9E3779B97F4A7C15UL;
            hash ^= hash >> 29;
        }

        for (var kind = 0; kind < left.Length; kind++)
        {
            hash += _salt[kind] * (ulong)left[kind];
        }

        hash = Math.Max(hash, 1);
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
