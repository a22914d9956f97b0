using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>Where a stretch lies on the edge that a line has divided, counter-clockwise as the edge runs.</summary>
/// <param name="Before">How much of the edge lies before it.</param>
/// <param name="Whole">How long the edge is.</param>
public readonly record struct EdgeStretch(Length Before, Length Whole);
