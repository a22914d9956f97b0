using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>The options (a copy in one of its turns) in order of two extents, of which the greatest at or below a pair is found in
/// log n; options that are gone are skipped by a disjoint-set forest (Tarjan 1975). Extents are named by rank.</summary>
internal sealed class ExtentIndex
{
    // In order: both ranks as one number, and the option; for each option its place; for each place the
    // nearest one at or below that is still there, 0 for none.
    private readonly ulong[] _keys;
    private readonly int[] _options;
    private readonly int[] _slot;
    private readonly int[] _present;

    /// <summary>Sorts the options by the first rank, then by the second.</summary>
    /// <param name="firstRank">First rank of each option, at least 0.</param>
    /// <param name="secondRank">Second rank of each option, at least 0.</param>
    public ExtentIndex(int[] firstRank, int[] secondRank)
    {
        _keys = new ulong[firstRank.Length];
        _options = new int[firstRank.Length];
        _slot = new int[firstRank.Length];
        _present = new int[firstRank.Length + 1];
        for (var option = 0; option < _keys.Length; option++)
        {
            _keys[option] = Key(firstRank[option], secondRank[option]);
            _options[option] = option;
        }

        Array.Sort(_keys, _options);
        for (var at = 0; at < _options.Length; at++)
        {
            _slot[_options[at]] = at;
            _present[at + 1] = at + 1;
        }
    }

    /// <summary>The option with the greatest pair of ranks at or below the given one; -1 when there is none.</summary>
    /// <param name="first">Greatest first rank; below 0 there is none.</param>
    /// <param name="second">Greatest second rank for that first one.</param>
    /// <returns>The option; the pair is compared by its first rank, and by the second only where the first is
    /// equal.</returns>
    public int AtOrBelow(int first, int second)
    {
        if (first < 0)
        {
            return -1;
        }

        // A second rank of -1 asks for options below the first rank altogether.
        ulong key = Key(first, second + 1);
        var (low, high) = (0, _keys.Length);
        while (low < high)
        {
            int middle = (low + high) >> 1;
            (low, high) = _keys[middle] < key ? (middle + 1, high) : (low, middle);
        }

        Debug.Assert(low == 0 || _keys[low - 1] < key, "The options are not in order.");
        int found = Present(low);
        return found == 0 ? -1 : _options[found - 1];
    }

    /// <summary>Removes an option.</summary>
    /// <param name="option">An option that may be gone already.</param>
    public void Remove(int option) => _present[_slot[option] + 1] = _slot[option];

    private static ulong Key(int first, int second) => ((ulong)first << 32) | (uint)second;

    /// <summary>The nearest place at or below that is still there; the way to it is shortened for the
    /// next time.</summary>
    private int Present(int slot)
    {
        int root = slot;
        while (_present[root] != root)
        {
            root = _present[root];
        }

        while (_present[slot] != root)
        {
            (slot, _present[slot]) = (_present[slot], root);
        }

        return root;
    }
}
