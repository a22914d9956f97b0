using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Closures;

/// <summary>Two hemmed strips or flaps that overlap, held by pairs of ties.</summary>
/// <param name="Side">Where it is.</param>
/// <param name="Return">How far its section runs round each corner.</param>
/// <param name="Fold">Depth of each turn of the hems.</param>
/// <param name="Overlap">How far they overlap.</param>
/// <param name="TieLength">Finished length of each tie.</param>
public sealed record TieClosure(Side Side, Length Return, Length Fold, Length Overlap, Length TieLength)
    : OverlappingClosure(Side, Return, Fold, Overlap)
{
    /// <inheritdoc />
    public override ClosureKind Kind => ClosureKind.Ties;
}
