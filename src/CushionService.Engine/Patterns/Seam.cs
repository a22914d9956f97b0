using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns;

/// <summary>Joins edges: the finished lengths of both sides agree exactly, but for an overlap on the other side.</summary>
/// <param name="Kind">How they are joined.</param>
/// <param name="One">Edges that lie end to end on one side.</param>
/// <param name="Other">Edges on the other side, end to end or overlapping.</param>
/// <param name="Lap">How far edges of the other side lie over each other.</param>
public sealed record Seam(SeamKind Kind, ImmutableArray<EdgeRef> One, ImmutableArray<EdgeRef> Other, Length Lap = default)
{
    /// <summary>Joins one edge to one other.</summary>
    public Seam(SeamKind kind, EdgeRef one, EdgeRef other)
        : this(kind, [one], [other])
    {
    }
}
