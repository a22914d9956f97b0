namespace CushionService.Engine.Specifications.Fillings;

/// <summary>Batting round a block of foam.</summary>
/// <param name="Item">The batting that is bought.</param>
/// <param name="Sides">What it covers.</param>
/// <param name="Layers">How many layers, at least 1.</param>
public sealed record WrapSpecification(string Item, WrapSides Sides, int Layers);
