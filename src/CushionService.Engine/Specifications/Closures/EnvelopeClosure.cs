using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Closures;

/// <summary>Two hemmed flaps that overlap, held by nothing.</summary>
/// <param name="Side">Where it is.</param>
/// <param name="Fold">Depth of each turn of the flaps' double-folded hems.</param>
/// <param name="Overlap">How far the flaps overlap.</param>
public sealed record EnvelopeClosure(Side Side, Length Fold, Length Overlap) : OverlappingClosure(Side, Length.Zero, Fold, Overlap)
{
    /// <summary>Whether the flaps come from the left and the right, and not from the front and the back.</summary>
    public bool Sideways { get; init; }

    /// <inheritdoc />
    public override ClosureKind Kind => ClosureKind.Envelope;
}
