using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Closures;

/// <summary>A zipper.</summary>
/// <param name="Side">Where it is.</param>
/// <param name="Return">How far its section runs round each corner.</param>
/// <param name="TurnUnder">Fabric turned under on each side of it.</param>
/// <param name="Lap">How far one edge lies over the other and hides it; zero where it is centred between them.</param>
public sealed record ZipperClosure(Side Side, Length Return, Length TurnUnder, Length Lap = default) : ClosureSpecification(Side)
{
    /// <inheritdoc />
    public override ClosureKind Kind => ClosureKind.Zipper;
}
