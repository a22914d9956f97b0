using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Intake;

namespace CushionService.Desk;

/// <summary>Sends an order as a door read it to the desk.</summary>
internal static class Readings
{
    /// <summary>Says whether the order can be made, its readable faults among the violations.</summary>
    public static Outcome<ValidationAnswer> Validate(
        this ReceivedOrder reading,
        OrderDesk desk,
        CancellationToken cancellation,
        Purpose purpose = Purpose.Making
    ) => reading.Validate(desk, violation => violation, cancellation, purpose);

    /// <summary>Says whether the order can be made, the places of the rules that it breaks being those that the door knows them
    /// by.</summary>
    public static Outcome<ValidationAnswer> Validate(
        this ReceivedOrder reading,
        OrderDesk desk,
        Func<Violation, Violation> placed,
        CancellationToken cancellation,
        Purpose purpose = Purpose.Making
    )
    {
        if (reading.Order is null)
        {
            return new Refusal(reading.Violations);
        }

        Outcome<ValidationAnswer> outcome = desk.Validate(reading.Order, purpose, cancellation);
        return !outcome.Answered
            ? outcome
            : outcome.Answer with
            {
                Valid = outcome.Answer.Valid && reading.Violations.Count == 0,
                Violations = Joined(reading, outcome.Answer.Violations.Select(placed)),
            };
    }

    /// <summary>Sends the order to the desk; one that the door found fault with is refused, with the rules that it breaks
    /// besides.</summary>
    public static Outcome<TAnswer> Send<TAnswer>(
        this ReceivedOrder reading,
        OrderDesk desk,
        Func<OrderDesk, Order, CancellationToken, Outcome<TAnswer>> call,
        CancellationToken cancellation,
        Purpose purpose = Purpose.Making
    )
        where TAnswer : class
    {
        if (reading.Order is not null && reading.Violations.Count == 0)
        {
            return call(desk, reading.Order, cancellation);
        }

        Outcome<ValidationAnswer> checks = reading.Validate(desk, cancellation, purpose);
        return checks.Answered ? new Refusal(checks.Answer.Violations) : checks.Refusal;
    }

    // What the door took out of the order may be missed by a rule: one violation a place is enough.
    private static Violation[] Joined(ReceivedOrder reading, IEnumerable<Violation> rules)
    {
        HashSet<string> places = [.. reading.Violations.Select(violation => violation.Pointer)];
        return [.. reading.Violations, .. rules.Where(violation => !places.Contains(violation.Pointer))];
    }
}
