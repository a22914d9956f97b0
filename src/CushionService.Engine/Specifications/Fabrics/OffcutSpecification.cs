using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>A length or an offcut of a fabric that one has.</summary>
/// <param name="Width">Across the fabric, above zero.</param>
/// <param name="Length">Along the fabric, above zero.</param>
/// <param name="Lot">The dye lot that it was cut from; null when unknown.</param>
public readonly record struct OffcutSpecification(Length Width, Length Length, string? Lot = null);
