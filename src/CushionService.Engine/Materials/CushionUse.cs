namespace CushionService.Engine.Materials;

/// <summary>How much of a material one cushion line takes.</summary>
/// <param name="Cushion">The cushion's id.</param>
/// <param name="Amount">How much, at least 0, in a unit that all uses of the material share.</param>
/// <remarks>Only the ratio of amounts within a material means something: it allots the material's cost to the
/// cushions.</remarks>
public readonly record struct CushionUse(string Cushion, decimal Amount);
