namespace CushionService.Nesting.Rectangles;

/// <summary>The steps of a search with rectangles: for each copy, and for all copies at most. A step takes about 6 ns on one
/// core.</summary>
internal static class RectangleSteps
{
    private const long QuickShare = 15_000;
    private const long QuickMost = 3_000_000;
    private const long StandardShare = 500_000;
    private const long StandardMost = 75_000_000;
    private const long ThoroughShare = 15_000_000;
    private const long ThoroughMost = 600_000_000;

    /// <summary>The steps of an effort for a number of copies; none for no effort, which is a single pass.</summary>
    /// <param name="effort">How hard to search; null for a single pass.</param>
    /// <param name="copies">Number of copies.</param>
    public static long For(Effort? effort, int copies) =>
        effort switch
        {
            null => 0,
            Effort.Quick => Math.Min(copies * QuickShare, QuickMost),
            Effort.Standard => Math.Min(copies * StandardShare, StandardMost),
            _ => Math.Min(copies * ThoroughShare, ThoroughMost),
        };
}
