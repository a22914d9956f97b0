namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>Offsets on a segment, or at a point, where a moving outline fits between parts of a lying one without play: free, though
/// both sides are forbidden.</summary>
/// <param name="FromX">Offset across where it begins, grid units.</param>
/// <param name="FromY">Offset along where it begins.</param>
/// <param name="ToX">Offset across where it ends; where it began for a point.</param>
/// <param name="ToY">Offset along where it ends.</param>
internal readonly record struct Slot(double FromX, double FromY, double ToX, double ToY);
