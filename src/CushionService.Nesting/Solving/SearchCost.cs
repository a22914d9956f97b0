using CushionService.Nesting.Outlines;
using CushionService.Nesting.Rectangles;

namespace CushionService.Nesting.Solving;

/// <summary>What a search may cost, before it begins, so that the layouts of one answer share the steps of one effort. The unit is a step,
/// which takes as long in a search of outlines as in one of rectangles.</summary>
public static class SearchCost
{
    // With fewer steps than this leaves, a search is one pass anyway.
    private const long MostShares = 4096;

    /// <summary>What one search may cost at most, however many copies it lays.</summary>
    /// <param name="effort">How hard to search.</param>
    public static long Most(Effort effort) => Of(effort, int.MaxValue, outlines: true);

    /// <summary>What one search may cost that shares its steps with no other.</summary>
    /// <param name="effort">How hard to search.</param>
    /// <param name="copies">How many copies it lays, at least 0.</param>
    /// <param name="outlines">Whether any is an outline.</param>
    public static long Of(Effort effort, int copies, bool outlines) =>
        outlines
            ? OutlineSteps.For(effort, copies)
                + RectangleSteps.For(effort == Effort.Quick ? Effort.Quick : Effort.Standard, copies) / OutlineKernel.ForFloor
            : RectangleSteps.For(effort, copies);

    /// <summary>By how many searches their steps must be shared, so that together they keep a limit.</summary>
    /// <param name="cost">What they may cost together, at least 0.</param>
    /// <param name="limit">What they may take.</param>
    /// <returns>From 1, where they keep the limit as they are, to 4 096.</returns>
    public static int SharedBy(long cost, long limit) => (int)Math.Clamp((cost + limit - 1) / Math.Max(1, limit), 1, MostShares);
}
