namespace CushionService.Nesting.Rectangles;

/// <summary>The steps of a search with rectangles: for each copy, and for all copies at most. A step takes 4 to 7 ns on one core.</summary>
internal static class RectangleSteps
{
    private const long QuickShare = 45_000;
    private const long QuickMost = 6_000_000;
    private const long StandardShare = 5_000_000;
    private const long StandardMost = 64_000_000;
    private const long ThoroughShare = 100_000_000;
    private const long ThoroughMost = 2_200_000_000;
    private const long OvernightShare = 400_000_000;
    private const long OvernightMost = 8_000_000_000;

    /// <summary>The steps of an effort for a number of copies; none for no effort, which is a single pass.</summary>
    /// <param name="effort">How hard to search; null for a single pass.</param>
    /// <param name="copies">Number of copies.</param>
    public static long For(Effort? effort, int copies) =>
        effort switch
        {
            null => 0,
            Effort.Quick => Math.Min(copies * QuickShare, QuickMost),
            Effort.Standard => Math.Min(copies * StandardShare, StandardMost),
            Effort.Thorough => Math.Min(copies * ThoroughShare, ThoroughMost),
            _ => Math.Min(copies * OvernightShare, OvernightMost),
        };
}
