namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>What the inner loop of a pass reads of a copy, side by side in memory.</summary>
/// <param name="Across">Extent across the strip, unturned, in grid units.</param>
/// <param name="Along">Extent along the strip, unturned, in grid units.</param>
/// <param name="Kind">Which kind it is of.</param>
/// <param name="Turns">Whether it may be laid in both turns.</param>
internal readonly record struct CopySides(long Across, long Along, int Kind, bool Turns);
