using System.Globalization;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>A dual feasible function of an axis: numbers given to extents such that extents which fit side by side into a whole never
/// add up to more than the whole's number.</summary>
/// <param name="Family">Which rule gives the number.</param>
/// <param name="Parameter">The rule's parameter; positive.</param>
internal readonly record struct DualFunction(DualRule Family, long Parameter)
{
    /// <summary>No function gives more than this many times the whole.</summary>
    public const int MostMultiple = 6;

    /// <summary>The number of an extent, 0 for one that exceeds the whole.</summary>
    /// <param name="extent">Grid units, at least 0.</param>
    /// <param name="whole">Grid units, above 0.</param>
    /// <returns>At least 0, at most <see cref="MostMultiple"/> times the whole.</returns>
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

    /// <summary>The numbers of extents, as <see cref="Of(long, long)"/> has them one by one.</summary>
    /// <param name="extents">Grid units, at least 0.</param>
    /// <param name="whole">Grid units, above 0.</param>
    /// <param name="numbers">Gets a number for each extent.</param>
    public void Of(ReadOnlySpan<long> extents, long whole, Span<long> numbers)
    {
        for (var at = 0; at < extents.Length; at++)
        {
            numbers[at] = Of(extents[at], whole);
        }
    }

    /// <summary>The function as the figures of a proof name it.</summary>
    public override string ToString() =>
        Family switch
        {
            DualRule.Extent => "extent",
            DualRule.Multiple => string.Create(CultureInfo.InvariantCulture, $"u({Parameter})"),
            DualRule.Threshold => string.Create(CultureInfo.InvariantCulture, $"threshold({Parameter})"),
            _ => string.Create(CultureInfo.InvariantCulture, $"rounding({Parameter})"),
        };
}
