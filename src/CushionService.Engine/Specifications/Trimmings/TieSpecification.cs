using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>Ties, two by two in the seam of a side.</summary>
/// <param name="Pairs">How many pairs, at least 1.</param>
/// <param name="Side">The side in whose seam they are caught.</param>
/// <param name="Length">Finished length of each.</param>
/// <param name="Width">Finished width.</param>
/// <param name="Make">How each is made.</param>
public sealed record TieSpecification(int Pairs, Side Side, Length Length, Length Width, StrapMake Make);
