using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>A length or an offcut of a fabric that one has.</summary>
/// <param name="Width">Across the fabric, above zero.</param>
/// <param name="Length">Along the fabric, above zero.</param>
public readonly record struct OffcutSpecification(Length Width, Length Length);
