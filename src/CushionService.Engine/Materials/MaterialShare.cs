namespace CushionService.Engine.Materials;

/// <summary>What one cushion line needs of a material.</summary>
/// <param name="Cushion">The cushion's id.</param>
/// <param name="Needed">How much, above 0, in one measure for all shares of the material.</param>
public readonly record struct MaterialShare(string Cushion, decimal Needed);
