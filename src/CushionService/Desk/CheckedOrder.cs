using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Intake;

namespace CushionService.Desk;

/// <summary>An order after every check that needs no layout: the rules of its fields, and whether each piece fits its
/// fabric.</summary>
/// <param name="Order">The order as it was sent.</param>
/// <param name="Intake">What the checks of its fields found, and the specification that the engine works from.</param>
/// <param name="Draft">The cut pieces; null when a rule of a field is broken, since nothing can be drafted
/// then.</param>
/// <param name="Violations">Every broken rule, placed as the caller knows its fields; empty for a sound order.</param>
/// <param name="Warnings">What is allowed but unwise, placed likewise.</param>
internal sealed record CheckedOrder(
    Order Order,
    IntakeResult Intake,
    Drafting? Draft,
    ImmutableArray<Violation> Violations,
    ImmutableArray<Violation> Warnings
)
{
    /// <summary>The language of who reads the answer.</summary>
    public Language Language { get; init; }

    /// <summary>Places findings as the caller knows its fields.</summary>
    public required Func<ImmutableArray<Violation>, ImmutableArray<Violation>> Placed { get; init; }

    /// <summary>The unit of its lengths, and of those in sentences.</summary>
    public LengthUnit Unit => OrderContext.UnitOf(Order.Units);

    /// <summary>The cut pieces of a sound order.</summary>
    /// <exception cref="InvalidOperationException">The order breaks a rule: only a validation may look at such an
    /// order.</exception>
    public Drafting Drafting => Draft ?? throw new InvalidOperationException("An order that breaks a rule has no pieces.");
}
