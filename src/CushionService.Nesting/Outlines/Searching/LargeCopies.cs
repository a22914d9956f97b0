using CushionService.Nesting.Outlines.Placing;

namespace CushionService.Nesting.Outlines.Searching;

/// <summary>The copies whose places matter most: small ones find a place between them by themselves.</summary>
internal static class LargeCopies
{
    /// <summary>Copies count as large until they make up this share of the area.</summary>
    private const double LargeShare = 0.75;

    /// <summary>The copies that may lie anywhere, from the largest on, until they make up the share of the area.</summary>
    /// <param name="copies">All copies.</param>
    /// <returns>Their numbers, the largest first; none when every copy is aligned.</returns>
    public static int[] Of(Copies copies)
    {
        int[] free = [.. Enumerable.Range(0, copies.Count).Where(copy => copies.Aligned[copy] is null)];
        Array.Sort(Array.ConvertAll(free, copy => -copies.Areas[copy]), free);
        var wanted = LargeShare * free.Sum(copy => copies.Areas[copy]);
        var (count, area) = (0, 0.0);
        for (; count < free.Length && area < wanted; count++)
        {
            area += copies.Areas[free[count]];
        }

        return free[..count];
    }
}
