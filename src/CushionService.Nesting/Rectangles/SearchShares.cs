using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Rectangles;

/// <summary>How a search shares its steps among its parts, by what was measured on the literature's instances and on cushion
/// orders.</summary>
internal static class SearchShares
{
    // Steps for each copy, below which a search is a quick one.
    private const long QuickOnly = 100_000;

    // Steps for each copy, with which full boxes of half as many copies again are searched through.
    private const long ForLarger = 5_000_000;

    /// <summary>The share of a round for the exact search. Few kinds or few copies can be searched through; many different ones are found
    /// sooner than ruled out.</summary>
    /// <param name="set">All copies.</param>
    /// <returns>From 0 to 1.</returns>
    public static double ForProof(RectangleSet set) =>
        set.Kinds <= 10 ? 0.7
        : set.Copies <= 24 ? 0.4
        : 0.1;

    /// <summary>The share of a round for a box that is full: it finds what beams do not find up to some thirty copies, and with turns up to
    /// twenty; a quick search has no steps for it above that.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="turns">Whether any kind may turn.</param>
    /// <param name="limit">All steps of the search.</param>
    /// <returns>From 0 to 1.</returns>
    public static double ForFullBox(RectangleSet set, bool turns, long limit) =>
        set.Copies <= 20 ? 0.5
        : turns || limit < QuickOnly * set.Copies ? 0
        : set.Copies <= 32 || (set.Copies <= 48 && limit >= ForLarger * set.Copies) ? 0.5
        : set.Copies <= 80 ? 0.15
        : 0;

    /// <summary>Which part of what is left for shorter layouts goes to the local search, where there are beams too: one in this many. With
    /// turns it finds full boxes of few copies; of some hundred, beams find more; and of more again each of their layers costs too
    /// much.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="turns">Whether any kind may turn.</param>
    /// <param name="limit">All steps of the search.</param>
    /// <returns>2 at least.</returns>
    public static long LocalPart(RectangleSet set, bool turns, long limit) =>
        !turns ? 8
        : set.Copies is <= 30 or >= 150 || limit < QuickOnly * set.Copies ? 2
        : 32;
}
