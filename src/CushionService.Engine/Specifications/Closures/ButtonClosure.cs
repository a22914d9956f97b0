using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Closures;

/// <summary>Two hemmed strips or flaps that overlap, held by buttons and buttonholes.</summary>
/// <param name="Side">Where it is.</param>
/// <param name="Return">How far its section runs round each corner.</param>
/// <param name="Fold">Depth of each turn of the hems.</param>
/// <param name="Overlap">How far they overlap.</param>
/// <param name="Diameter">Diameter of the buttons.</param>
public sealed record ButtonClosure(Side Side, Length Return, Length Fold, Length Overlap, Length Diameter)
    : OverlappingClosure(Side, Return, Fold, Overlap)
{
    /// <inheritdoc />
    public override ClosureKind Kind => ClosureKind.Buttons;
}
