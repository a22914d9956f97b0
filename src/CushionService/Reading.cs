using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;

namespace CushionService;

/// <summary>An order as a door read it.</summary>
/// <param name="Order">What could be read; null when the order is not of the contract's types.</param>
/// <param name="Violations">What the door itself found wrong; empty for an order that reads cleanly.</param>
internal readonly record struct Reading(Order? Order, IReadOnlyList<Violation> Violations)
{
    /// <summary>Says whether the order can be made, its readable faults among the violations.</summary>
    public Outcome<ValidationAnswer> Validate(OrderDesk desk, CancellationToken cancellation)
    {
        if (Order is null)
        {
            return new Refusal(Violations);
        }

        Outcome<ValidationAnswer> outcome = desk.Validate(Order, cancellation);
        return Violations.Count == 0 || !outcome.Answered
            ? outcome
            : outcome.Answer with { Valid = false, Violations = Joined(outcome.Answer.Violations) };
    }

    /// <summary>Sends the order to the desk; one that the door found fault with is refused, with the rules that it breaks besides.</summary>
    public Outcome<TAnswer> Send<TAnswer>(OrderDesk desk, Func<OrderDesk, Order, CancellationToken, Outcome<TAnswer>> call, CancellationToken cancellation)
        where TAnswer : class
    {
        if (Order is not null && Violations.Count == 0)
        {
            return call(desk, Order, cancellation);
        }

        Outcome<ValidationAnswer> checks = Validate(desk, cancellation);
        return checks.Answered ? new Refusal(checks.Answer.Violations) : checks.Refusal;
    }

    // What the door took out of the order may be missed by a rule: one violation a place is enough.
    private Violation[] Joined(IReadOnlyList<Violation> rules)
    {
        HashSet<string> places = [.. Violations.Select(violation => violation.Pointer)];
        return [.. Violations, .. rules.Where(violation => !places.Contains(violation.Pointer))];
    }
}
