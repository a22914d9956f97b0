namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>A stretch of an axis over which the forbidden intervals keep their number and their slopes. It carries its first
/// band, mostly its only one, so that one cache line holds all.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Where it ends and the next one begins.</param>
/// <param name="Band">The first of its bands, which hold strictly between the ends.</param>
/// <param name="Count">How many bands.</param>
/// <param name="First">The place of the first of its bands among all.</param>
/// <param name="FirstAtStart">The place of the first of the bands that hold exactly at the start.</param>
/// <param name="AtStart">How many of those.</param>
internal readonly record struct Slab(double Start, double End, Band Band, int Count, int First, int FirstAtStart, int AtStart);
