namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Where one copy lies.</summary>
/// <param name="X">Left edge, in grid units.</param>
/// <param name="Y">Lower edge, in grid units.</param>
/// <param name="Turned">Whether its sides are exchanged.</param>
internal readonly record struct RectanglePlace(long X, long Y, bool Turned);
