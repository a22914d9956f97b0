using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Contract;

/// <summary>Why an order gets no answer.</summary>
/// <param name="Violations">Every rule that the order breaks; at least one.</param>
/// <param name="Unit">The unit of lengths in their sentences: the order's; inches for an order that could not be read.</param>
public sealed record Refusal(IReadOnlyList<Violation> Violations, LengthUnit Unit = LengthUnit.Inch)
{
    /// <summary>Seconds after which the same order may be sent again; null when it would be refused again.</summary>
    public int? RetryAfterSeconds { get; init; }
}
