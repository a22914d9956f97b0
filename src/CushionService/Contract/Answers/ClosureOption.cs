using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Contract.Answers;

/// <summary>A closure, and the sides it may stand on.</summary>
public sealed record ClosureOption
{
    /// <summary>The closure.</summary>
    public required ClosureKind Kind { get; init; }

    /// <summary>The sides; the first is taken when an order names none.</summary>
    public required IReadOnlyList<Side> Sides { get; init; }
}
