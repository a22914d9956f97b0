using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The dual feasible functions that are tried on an axis: all families, with the parameters at which something changes for the
/// extents at hand.</summary>
internal static class DualFunctions
{
    /// <summary>How many functions <see cref="For"/> lists at most for a number of kinds.</summary>
    /// <param name="kinds">Number of kinds.</param>
    public static int MostFor(int kinds) => 1 + DualFunction.MostMultiple + (8 * kinds);

    /// <summary>Lists the functions that may tell something about extents in a whole.</summary>
    /// <param name="set">Whose extents: those of the axis, and where any kind turns, those of the other axis too.</param>
    /// <param name="whole">The whole.</param>
    /// <param name="ofLength">Whether the axis is the length, and not the width.</param>
    /// <param name="functions">Has room for <see cref="MostFor"/>.</param>
    /// <returns>How many there are.</returns>
    public static int For(RectangleSet set, long whole, bool ofLength, Span<DualFunction> functions)
    {
        functions[0] = new DualFunction(DualRule.Extent, 1);
        for (var k = 1; k <= DualFunction.MostMultiple; k++)
        {
            functions[k] = new DualFunction(DualRule.Multiple, k);
        }

        int count = 1 + DualFunction.MostMultiple;
        for (var kind = 0; kind < set.Kinds; kind++)
        {
            // An extent that never lies along the axis marks no place where a function of it changes.
            ReadOnlySpan<long> extents =
                set.MayTurn ? [set.Across[kind], set.Along[kind]]
                : ofLength ? [set.Along[kind]]
                : [set.Across[kind]];
            foreach (long extent in extents)
            {
                // With many kinds the pairs would outnumber what a page can wait for.
                if (set.Kinds > 8 && count > 40)
                {
                    continue;
                }

                foreach (long threshold in (ReadOnlySpan<long>)[extent, whole - extent + 1])
                {
                    var function = new DualFunction(DualRule.Threshold, threshold);
                    if (threshold > 0 && threshold <= whole / 2 && !functions[..count].Contains(function))
                    {
                        functions[count++] = function;
                        functions[count++] = function with { Family = DualRule.Rounding };
                    }
                }
            }
        }

        return count;
    }
}
