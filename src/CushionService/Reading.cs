using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Intake;

namespace CushionService;

/// <summary>An order as a door read it.</summary>
/// <param name="Order">What could be read; null when the order is not of the contract's types.</param>
/// <param name="Violations">What the door itself found wrong; empty for an order that reads cleanly.</param>
internal readonly record struct Reading(Order? Order, IReadOnlyList<Violation> Violations)
{
    /// <summary>Says whether the order can be made, its readable faults among the violations.</summary>
    public Outcome<ValidationAnswer> Validate(OrderDesk desk, CancellationToken cancellation, Purpose purpose = Purpose.Making) =>
        Validate(desk, violation => violation, cancellation, purpose);

    /// <summary>Says whether the order can be made, the places of the rules that it breaks being those that the door knows them by.</summary>
    public Outcome<ValidationAnswer> Validate(
        OrderDesk desk,
        Func<Violation, Violation> placed,
        CancellationToken cancellation,
        Purpose purpose = Purpose.Making
    )
    {
        if (Order is null)
        {
            return new Refusal(Violations);
        }

        Outcome<ValidationAnswer> outcome = desk.Validate(Order, purpose, cancellation);
        return !outcome.Answered
            ? outcome
            : outcome.Answer with
            {
                Valid = outcome.Answer.Valid && Violations.Count == 0,
                Violations = Joined(outcome.Answer.Violations.Select(placed)),
            };
    }

    /// <summary>Sends the order to the desk; one that the door found fault with is refused, with the rules that it breaks besides.</summary>
    public Outcome<TAnswer> Send<TAnswer>(
        OrderDesk desk,
        Func<OrderDesk, Order, CancellationToken, Outcome<TAnswer>> call,
        CancellationToken cancellation,
        Purpose purpose = Purpose.Making
    )
        where TAnswer : class
    {
        if (Order is not null && Violations.Count == 0)
        {
            return call(desk, Order, cancellation);
        }

        Outcome<ValidationAnswer> checks = Validate(desk, cancellation, purpose);
        return checks.Answered ? new Refusal(checks.Answer.Violations) : checks.Refusal;
    }

    // What the door took out of the order may be missed by a rule: one violation a place is enough.
    private Violation[] Joined(IEnumerable<Violation> rules)
    {
        HashSet<string> places = [.. Violations.Select(violation => violation.Pointer)];
        return [.. Violations, .. rules.Where(violation => !places.Contains(violation.Pointer))];
    }
}
