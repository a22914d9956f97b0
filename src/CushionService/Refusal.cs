using CushionService.Engine.Specifications;

namespace CushionService;

/// <summary>Why an order gets no answer.</summary>
/// <param name="Violations">Every rule that the order breaks; at least one.</param>
/// <param name="Unreadable">Whether the order is not of the contract's types, as against breaking a rule of the trade.</param>
public sealed record Refusal(IReadOnlyList<Violation> Violations, bool Unreadable = false);
