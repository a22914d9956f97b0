using CushionService.Engine.Specifications;

namespace CushionService.Engine.Fitting;

/// <summary>Some of a line of cushions.</summary>
/// <param name="Cushion">The line.</param>
/// <param name="Quantity">How many of it, at least 1.</param>
public sealed record CushionCount(CushionSpecification Cushion, int Quantity);
