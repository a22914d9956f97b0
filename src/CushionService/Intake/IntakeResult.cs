using System.Collections.Immutable;
using CushionService.Engine.Specifications;

namespace CushionService.Intake;

/// <summary>What becomes of an order that has been read.</summary>
/// <param name="Specification">The order as the engine works from it; null when it breaks a rule.</param>
/// <param name="Violations">Every rule that it breaks, by pointer.</param>
/// <param name="Warnings">Everything that is allowed but unwise, by pointer.</param>
internal sealed record IntakeResult(
    OrderSpecification? Specification,
    ImmutableArray<Violation> Violations,
    ImmutableArray<Violation> Warnings
);
