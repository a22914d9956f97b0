using System.Globalization;
using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>A dual feasible function of an axis: numbers given to extents such that extents which fit side by side into a whole never
/// add up to more than the whole's number.</summary>
/// <param name="Family">Which rule gives the number.</param>
/// <param name="Parameter">The rule's parameter; positive.</param>
internal readonly record struct DualFunction(DualRule Family, long Parameter)
{
    /// <summary>No function gives more than this many times the whole.</summary>
    public const int MostMultiple = 6;

    /// <summary>How many functions <see cref="For"/> lists at most for a number of kinds.</summary>
    public static int MostFor(int kinds) => 1 + MostMultiple + (8 * kinds);

    /// <summary>Lists the functions that may tell something about extents in a whole.</summary>
    /// <param name="set">Whose extents, those of either side.</param>
    /// <param name="whole">The whole.</param>
    /// <param name="functions">Has room for <see cref="MostFor"/>.</param>
    /// <returns>How many there are.</returns>
    public static int For(RectangleSet set, long whole, Span<DualFunction> functions)
    {
        functions[0] = new DualFunction(DualRule.Extent, 1);
        for (var k = 1; k <= MostMultiple; k++)
        {
            functions[k] = new DualFunction(DualRule.Multiple, k);
        }

        int count = 1 + MostMultiple;
        for (var kind = 0; kind < set.Kinds; kind++)
        {
            foreach (long extent in (ReadOnlySpan<long>)[set.Across[kind], set.Along[kind]])
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

    /// <summary>The number of an extent, 0 for one that exceeds the whole.</summary>
    public long Of(long extent, long whole)
    {
        if (extent > whole)
        {
            return 0;
        }

        switch (Family)
        {
            case DualRule.Extent:
                return extent;
            case DualRule.Multiple:
                (long multiple, long rest) = Math.DivRem((Parameter + 1) * extent, whole);
                return rest == 0 ? extent * Parameter : multiple * whole;
            case DualRule.Threshold:
                return extent > whole - Parameter ? whole
                    : extent < Parameter ? 0
                    : extent;
            default:
                return 2 * extent > whole ? 2 * ((whole / Parameter) - ((whole - extent) / Parameter))
                    : 2 * extent == whole ? whole / Parameter
                    : 2 * (extent / Parameter);
        }
    }

    public override string ToString() =>
        Family switch
        {
            DualRule.Extent => "extent",
            DualRule.Multiple => string.Create(CultureInfo.InvariantCulture, $"u({Parameter})"),
            DualRule.Threshold => string.Create(CultureInfo.InvariantCulture, $"threshold({Parameter})"),
            _ => string.Create(CultureInfo.InvariantCulture, $"rounding({Parameter})"),
        };
}
