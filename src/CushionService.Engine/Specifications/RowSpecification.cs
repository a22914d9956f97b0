using System.Collections.Immutable;

namespace CushionService.Engine.Specifications;

/// <summary>Cushions that lie beside each other, so that the fabric runs one way on all of them.</summary>
/// <param name="Id">Distinct within the order.</param>
/// <param name="Cushions">The ids of its cushions, from left to right.</param>
public sealed record RowSpecification(string Id, ImmutableArray<string> Cushions);
