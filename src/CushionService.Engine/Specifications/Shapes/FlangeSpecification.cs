using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Shapes;

/// <summary>The flange round the body of a flanged cushion.</summary>
/// <param name="Layers">Whether each face's flange is single or folded back on itself.</param>
/// <param name="Width">Finished width.</param>
/// <param name="Turning">Fabric turned under behind a double flange; zero for a single one.</param>
public sealed record FlangeSpecification(FlangeLayers Layers, Length Width, Length Turning);
