using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>The least extents of the copies that are still to come at each place of an order. Free space narrower or lower than these can
/// hold nothing more and is dropped, which keeps the list of free rectangles short.</summary>
/// <param name="set">The copies.</param>
internal sealed class LeastAhead(RectangleSet set)
{
    // One more place than there are copies: behind the last one nothing comes, so that anything is too narrow.
    private readonly long[] _across = new long[set.Copies + 1];
    private readonly long[] _along = new long[set.Copies + 1];

    /// <summary>Works out the extents for an order, from its end to its start.</summary>
    /// <param name="order">The copies in the order in which they are laid; no more than the set has.</param>
    public void Read(int[] order)
    {
        (_across[order.Length], _along[order.Length]) = (long.MaxValue, long.MaxValue);
        for (int at = order.Length - 1; at >= 0; at--)
        {
            int kind = set.KindOf[order[at]];
            var (across, along) = (set.Across[kind], set.Along[kind]);

            // A copy that may turn can use a stretch as narrow as its shorter side.
            long least = Math.Min(across, along);
            _across[at] = Math.Min(_across[at + 1], set.Turns[kind] ? least : across);
            _along[at] = Math.Min(_along[at + 1], set.Turns[kind] ? least : along);
        }
    }

    /// <summary>The least extents of the copies at a place of the order and after it.</summary>
    /// <param name="at">From 0, which is all copies, up to the order's length, which is none.</param>
    /// <returns>Grid units; <see cref="long.MaxValue"/> both when nothing is to come.</returns>
    public (long Across, long Along) From(int at) => (_across[at], _along[at]);
}
