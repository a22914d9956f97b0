namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Which of very many copies goes on a gap, found in log n: a copy of just its width, level with a wall if one is; else one that
/// is level with a wall; else the wider of two that fill the gap together; else the widest.</summary>
/// <remarks>Option 2c is copy c as it is, option 2c + 1 the same turned; what may not turn has itself twice. Extents are named by their
/// rank among all distinct ones.</remarks>
internal sealed class BulkChoice
{
    // Pairs that fill a gap together are looked for among this many of the widest.
    private const int PairsTried = 32;
    private readonly long[] _extents;
    private readonly int[] _across;
    private readonly int[] _along;
    private readonly ExtentIndex _byAcross;
    private readonly ExtentIndex _byAlong;
    private readonly bool[] _gone;
    private readonly int[] _ascending;
    private int _least;

    /// <summary>Sorts all options once.</summary>
    /// <param name="set">All copies; each has two options.</param>
    public BulkChoice(RectangleSet set)
    {
        _gone = new bool[set.Copies];
        _extents = [.. set.Across.Concat(set.Along).Distinct().Order()];
        int[] acrossRank = [.. set.Across.Select(Rank)];
        int[] alongRank = [.. set.Along.Select(Rank)];
        (_across, _along) = (new int[2 * set.Copies], new int[2 * set.Copies]);
        for (var copy = 0; copy < set.Copies; copy++)
        {
            int kind = set.KindOf[copy];
            bool turns = set.Turns[kind];
            (_across[2 * copy], _along[2 * copy]) = (acrossRank[kind], alongRank[kind]);
            (_across[2 * copy + 1], _along[2 * copy + 1]) = turns
                ? (alongRank[kind], acrossRank[kind])
                : (acrossRank[kind], alongRank[kind]);
        }

        _byAcross = new ExtentIndex(_across, _along);
        _byAlong = new ExtentIndex(_along, _across);
        _ascending = [.. Enumerable.Range(0, 2 * set.Copies)];
        Array.Sort((int[])_across.Clone(), _ascending);
    }

    /// <summary>Takes a copy out.</summary>
    /// <param name="copy">One that is laid; it is not put back.</param>
    public void Remove(int copy)
    {
        foreach (int gone in (ReadOnlySpan<int>)[2 * copy, 2 * copy + 1])
        {
            _byAcross.Remove(gone);
            _byAlong.Remove(gone);
        }

        _gone[copy] = true;
    }

    /// <summary>Whether a copy was taken out.</summary>
    /// <param name="copy">A copy of the set.</param>
    public bool IsGone(int copy) => _gone[copy];

    /// <summary>The option for a gap; -1 when none fits.</summary>
    /// <param name="gap">Width of the gap, in grid units.</param>
    /// <param name="leftRise">How far its left wall rises above the floor.</param>
    /// <param name="rightRise">How far its right wall does.</param>
    public int Choose(long gap, long leftRise, long rightRise)
    {
        int rank = Rank(gap);
        int widest = _byAcross.AtOrBelow(rank, int.MaxValue - 1);
        if (widest < 0)
        {
            return -1;
        }

        long level = Math.Min(leftRise, rightRise);
        long higher = Math.Max(leftRise, rightRise);
        // First case: it fills the gap. Level with a wall is better still, the lower wall before the higher.
        if (_extents[_across[widest]] == gap)
        {
            int exact = LevelAt(_byAcross, rank, level);
            exact = exact >= 0 ? exact : LevelAt(_byAcross, rank, higher);
            return exact >= 0 ? exact : widest;
        }

        long narrowest = Narrowest();
        // Second case: level with a wall, and leaving room for at least the narrowest copy.
        int beside = Beside(level, gap - narrowest);
        beside = beside >= 0 ? beside : Beside(higher, gap - narrowest);
        if (beside >= 0)
        {
            return beside;
        }

        // Third case: two that fill the gap together; both must not be turns of one copy.
        int option = widest;
        for (var tried = 0; tried < PairsTried && option >= 0; tried++)
        {
            long rest = gap - _extents[_across[option]];
            int restRank = Rank(rest);
            int partner = restRank >= 0 && _extents[restRank] == rest ? _byAcross.AtOrBelow(restRank, int.MaxValue - 1) : -1;
            if (partner >= 0 && _across[partner] == restRank && partner >> 1 != option >> 1)
            {
                return option;
            }

            option = _byAcross.AtOrBelow(_across[option], -1);
        }

        // Last: the widest that leaves room for another copy, or else the widest.
        int roomy = _byAcross.AtOrBelow(Rank(gap - narrowest), int.MaxValue - 1);
        return roomy >= 0 ? roomy : widest;
    }

    /// <summary>An option of just that first rank whose second extent is just the given one.</summary>
    /// <param name="index">Options by width.</param>
    /// <param name="rank">Rank of the width.</param>
    /// <param name="rise">The extent along the strip that is wanted, grid units.</param>
    /// <returns>-1 when there is none.</returns>
    private int LevelAt(ExtentIndex index, int rank, long rise)
    {
        int second = Rank(rise);
        int option = second >= 0 && _extents[second] == rise ? index.AtOrBelow(rank, second) : -1;
        return option >= 0 && _across[option] == rank && _along[option] == second ? option : -1;
    }

    /// <summary>The widest option up to a width whose rise is just the given one.</summary>
    /// <param name="rise">The extent along the strip that is wanted, grid units.</param>
    /// <param name="width">The greatest width.</param>
    /// <returns>-1 when there is none.</returns>
    private int Beside(long rise, long width)
    {
        int first = Rank(rise);
        int second = Rank(width);
        int option = first >= 0 && second >= 0 && _extents[first] == rise ? _byAlong.AtOrBelow(first, second) : -1;
        return option >= 0 && _along[option] == first ? option : -1;
    }

    /// <summary>The least width of any option that is left, grid units.</summary>
    private long Narrowest()
    {
        while (_gone[_ascending[_least] >> 1])
        {
            _least++;
        }

        return _extents[_across[_ascending[_least]]];
    }

    /// <summary>Rank of the greatest extent at or below a length; -1 when there is none.</summary>
    private int Rank(long length)
    {
        int at = Array.BinarySearch(_extents, length);
        return at >= 0 ? at : ~at - 1;
    }
}
