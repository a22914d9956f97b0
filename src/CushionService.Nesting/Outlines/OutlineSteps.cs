namespace CushionService.Nesting.Outlines;

/// <summary>The steps of a search with outlines: for each copy, and for all copies at most. A step takes 4 to 7 ns on one of two cores,
/// and up to 15 ns where both search.</summary>
internal static class OutlineSteps
{
    private const long QuickShare = 360_000;
    private const long QuickMost = 4_200_000;

    // Only many copies take the most steps, so that each of them is still placed and tested.
    private const long QuickMostOfFew = 3_600_000;
    private const long QuickForEach = 300;
    private const long StandardShare = 4_000_000;
    private const long StandardMost = 48_000_000;
    private const long ThoroughShare = 250_000_000;
    private const long ThoroughMost = 4_500_000_000;
    private const long OvernightShare = 750_000_000;
    private const long OvernightMost = 13_500_000_000;

    /// <summary>The steps of an effort for a number of copies, at least 1.</summary>
    /// <param name="effort">How hard to search.</param>
    /// <param name="copies">Number of copies.</param>
    public static long For(Effort effort, long copies) =>
        effort switch
        {
            Effort.Quick => Math.Min(copies * QuickShare, Math.Min(QuickMostOfFew + copies * QuickForEach, QuickMost)),
            Effort.Standard => Math.Min(copies * StandardShare, StandardMost),
            Effort.Thorough => Math.Min(copies * ThoroughShare, ThoroughMost),
            _ => Math.Min(copies * OvernightShare, OvernightMost),
        };
}
