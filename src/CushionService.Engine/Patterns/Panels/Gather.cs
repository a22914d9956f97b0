using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>An edge that is gathered before it is sewn.</summary>
/// <param name="Edge">The edge of the panel.</param>
/// <param name="To">The length that it is drawn up to.</param>
public sealed record Gather(EdgeName Edge, Length To);
