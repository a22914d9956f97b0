using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Shapes;

/// <summary>The ends of a bolster.</summary>
/// <param name="Kind">How they are closed.</param>
/// <param name="Tail">Fabric that extends beyond each tie; zero unless the ends are tied.</param>
/// <param name="Turning">Fabric turned in at each end that is gathered or tied; zero when the ends are flat.</param>
public sealed record BolsterEnds(BolsterEndKind Kind, Length Tail, Length Turning);
