using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications;

/// <summary>A length or an offcut of a cloth that one has.</summary>
/// <param name="Width">Across the cloth, above zero.</param>
/// <param name="Length">Along the cloth, above zero.</param>
public readonly record struct OffcutSpecification(Length Width, Length Length);
