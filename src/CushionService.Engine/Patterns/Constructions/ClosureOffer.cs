using System.Collections.Immutable;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>A closure, and the sides it may stand on.</summary>
/// <param name="Kind">The closure.</param>
/// <param name="Sides">At least one; the first is taken when none is named.</param>
public sealed record ClosureOffer(ClosureKind Kind, ImmutableArray<Side> Sides);
