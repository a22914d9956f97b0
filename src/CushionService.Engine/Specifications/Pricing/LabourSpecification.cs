using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Pricing;

/// <summary>What the workroom's time costs, and how much each operation takes.</summary>
/// <param name="HourlyRate">Price of an hour, at least 0, without tax.</param>
/// <param name="Minutes">Minutes for an operation done once, at least 0.</param>
/// <param name="Matching">Share that is added to a cushion's minutes when its pieces are matched to a repeat, at least 0.</param>
public sealed record LabourSpecification(Money HourlyRate, ImmutableDictionary<Operation, decimal> Minutes, decimal Matching);
