using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>Straps across the underside, caught in the left and the right seam.</summary>
/// <param name="Count">How many, at least 1.</param>
/// <param name="Width">Finished width.</param>
/// <param name="Length">Finished length of each from seam to seam; null where each is as long as the underside is wide where it
/// lies.</param>
/// <param name="Make">How each is made.</param>
public sealed record StrapSpecification(int Count, Length Width, Length? Length, StrapMake Make);
