using System.Collections.Immutable;
using CushionService.Engine.Layouts;

namespace CushionService.Engine.Fitting;

/// <summary>What is laid on one offcut.</summary>
/// <param name="Room">The offcut.</param>
/// <param name="Placements">The pieces on it, copies counted over all offcuts.</param>
public sealed record OffcutLayout(OffcutRoom Room, ImmutableArray<LaidPiece> Placements)
{
    /// <summary>The largest empty rectangles, the largest first; no two overlap.</summary>
    public ImmutableArray<EmptyRectangle> Left { get; } = EmptyRectangle.Largest(Room, Placements);
}
