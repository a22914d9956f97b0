using CushionService.Engine.Specifications;

namespace CushionService.Contract;

/// <summary>Why an order gets no answer.</summary>
/// <param name="Violations">Every rule that the order breaks; at least one.</param>
public sealed record Refusal(IReadOnlyList<Violation> Violations);
