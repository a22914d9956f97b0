using CushionService.Engine.Geometry;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>Names an edge within a pattern.</summary>
/// <param name="Part">The panel.</param>
/// <param name="Edge">Its edge.</param>
public readonly record struct EdgeRef(PartName Part, EdgeName Edge)
{
    /// <summary>Panel and edge, with a dot between.</summary>
    public override string ToString() => $"{Part}.{Edge}";
}
