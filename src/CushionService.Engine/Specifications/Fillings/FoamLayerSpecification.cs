using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Fillings;

/// <summary>A layer of foam in a cushion.</summary>
/// <param name="Item">The foam that is bought.</param>
/// <param name="Thickness">How thick the layer is, above zero.</param>
/// <param name="Density">Kilograms a cubic metre; null when not known.</param>
/// <param name="Oversize">How much larger than the cover it is cut, in width and depth.</param>
public sealed record FoamLayerSpecification(string Item, Length Thickness, decimal? Density, Length Oversize);
