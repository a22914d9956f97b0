using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Intake;
using CushionService.PriceBooks;

namespace CushionService.Desk;

/// <summary>Answers orders: checks them, has the engine work on them, and words the result in the records of the
/// contract. REST, gRPC and the streams all call <see cref="Handle{TAnswer}"/>, so that the same order has the same
/// answer everywhere.</summary>
/// <remarks>The desk keeps nothing of an order, and may be called on any number of threads at the same time.</remarks>
/// <param name="books">Where orders find the price books that they name.</param>
internal sealed class OrderDesk(IPriceBooks books)
{
    // A comparison and a fit decide an open grain for fabric of their own, so that deciding it here takes one part in this many of what a
    // quote takes.
    private const int OfOthers = 4;

    /// <summary>A desk without price books: every order that names one is refused.</summary>
    public OrderDesk()
        : this(PriceBookStore.Empty) { }

    /// <summary>Checks an order and answers it. The call takes as long as the search does, so it belongs on a worker
    /// thread.</summary>
    /// <param name="received">The order as it arrived, with the violations found while it was read.</param>
    /// <param name="purpose">What the order is sent for.</param>
    /// <typeparam name="TAnswer">The record of the contract that answers.</typeparam>
    /// <param name="cancellation">Cancels the search; checks and the drafting of one order, which take milliseconds, are not
    /// interrupted.</param>
    /// <returns>The answer, or a refusal with every violation: first what the caller's grant does not cover, then
    /// those of reading, then the broken rules.</returns>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public Outcome<TAnswer> Handle<TAnswer>(ReceivedOrder received, Purpose<TAnswer> purpose, CancellationToken cancellation)
        where TAnswer : class
    {
        if (received.Order is null)
        {
            return new Refusal(received.Violations);
        }

        // A call may have been cancelled while it waited for its worker: then not even the checks are begun.
        cancellation.ThrowIfCancellationRequested();
        CheckedOrder order = Check(received, received.Order, purpose.Rules, cancellation);
        return order.Violations.IsEmpty || purpose.AnswersUnsound
            ? purpose.Answer(order, cancellation)
            : new Refusal(order.Violations, order.Unit);
    }

    // Checks in two stages: fields first, then what only shows once the pieces are drafted, such as a piece wider than
    // its fabric. A price book is looked up once, so that all of an answer is priced by one version of it.
    private CheckedOrder Check(ReceivedOrder received, Order order, Purpose rules, CancellationToken cancellation)
    {
        IntakeResult intake = OrderIntake.Read(order, order.PriceBook is { } name ? books.Find(name) : null, rules);
        // An order beyond its caller's grant may be larger than the service drafts for that caller.
        Drafting? draft =
            intake.Specification is { } specification && received.Forbidden is null
                ? Drafting.Of(specification, rules == Purpose.Making ? 1 : OfOthers, cancellation)
                : null;
        // A comparison and a fit draft the order anew, for other fabric: whether a piece fits its own fabric does not
        // matter to them.
        ImmutableArray<Violation> broken =
            draft is not null && rules == Purpose.Making ? WidthChanges.Said(draft, cancellation) : intake.Violations;
        ImmutableArray<Violation> unwise = draft is null ? intake.Warnings : intake.Warnings.AddRange(draft.Warnings);
        return new CheckedOrder(order, intake, draft, received.WithRules(broken), received.Placed(unwise))
        {
            Language = received.Language,
            Placed = received.Placed,
        };
    }
}
