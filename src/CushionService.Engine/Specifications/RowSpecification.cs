using System.Collections.Immutable;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Specifications;

/// <summary>Cushions that lie beside each other, so that the fabric runs one way on all of them.</summary>
/// <param name="Id">Distinct within the order.</param>
/// <param name="Cushions">The ids of its cushions, from left to right.</param>
/// <param name="Print">How a print lies on them.</param>
/// <param name="Follows">The id of the row of seats whose print runs on to this one; null for none.</param>
public sealed record RowSpecification(string Id, ImmutableArray<string> Cushions, RowPrint Print = RowPrint.Same, string? Follows = null);
