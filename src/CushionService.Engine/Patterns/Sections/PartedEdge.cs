using CushionService.Engine.Geometry;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>A stretch of an edge on one side of a line that parts its outline.</summary>
/// <param name="Of">The edge.</param>
/// <param name="Name">What the stretch is called in its part.</param>
/// <param name="IsAfter">Whether it lies beyond the line.</param>
internal readonly record struct PartedEdge(EdgeName Of, EdgeName Name, bool IsAfter);
