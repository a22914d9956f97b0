namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>Offsets on a segment, or at a point, where a moving outline fits between parts of a lying one without play: free, though
/// both sides are forbidden.</summary>
internal readonly record struct Slot(double FromX, double FromY, double ToX, double ToY);
