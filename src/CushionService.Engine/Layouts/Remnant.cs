using CushionService.Engine.Measures;

namespace CushionService.Engine.Layouts;

/// <summary>A rectangle of the length sold on which nothing lies, and which cannot be made larger.</summary>
/// <param name="X">From the left edge of the usable width.</param>
/// <param name="Y">From the start of the layout.</param>
/// <param name="Width">Across.</param>
/// <param name="Length">Along.</param>
public readonly record struct Remnant(Length X, Length Y, Length Width, Length Length);
