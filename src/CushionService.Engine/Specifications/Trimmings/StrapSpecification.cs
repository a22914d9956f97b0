using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>Straps across the underside, caught in the left and the right seam.</summary>
/// <param name="Count">How many, at least 1.</param>
/// <param name="Width">Finished width.</param>
/// <param name="Length">Finished length from seam to seam.</param>
/// <param name="Make">How each is made.</param>
public sealed record StrapSpecification(int Count, Length Width, Length Length, StrapMake Make);
