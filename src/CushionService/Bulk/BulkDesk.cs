using CushionService.Admission;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Engine.Specifications;
using CushionService.Metrics;
using CushionService.Nesting;
using CushionService.Streaming;
using Microsoft.Extensions.Options;

namespace CushionService.Bulk;

/// <summary>Quotes orders that come from no call: from a queue, or from a file. The answers are those of a call, since the same desk makes
/// them; nobody waits, so that nothing is rejected as busy.</summary>
/// <param name="desk">Answers the orders.</param>
/// <param name="options">The deadlines.</param>
internal sealed class BulkDesk(OrderDesk desk, IOptions<AdmissionOptions> options)
{
    /// <summary>Quotes an order, and counts the outcome. Takes as long as the search does.</summary>
    /// <param name="received">The order as it was read; null for one that was too long.</param>
    /// <param name="stop">Cancels the order.</param>
    /// <exception cref="OperationCanceledException">The order was cancelled.</exception>
    public Outcome<QuoteAnswer> Quote(ReceivedOrder? received, CancellationToken stop)
    {
        Outcome<QuoteAnswer> outcome = received is { } order ? Answer(order, stop) : TooLong();
        OrderMetrics.Count(outcome.Refusal);
        return outcome;
    }

    // The deadline of a call without its wait: here it runs from the first step of work.
    private Outcome<QuoteAnswer> Answer(ReceivedOrder received, CancellationToken stop)
    {
        TimeSpan limit = options.Value.DeadlineOf(received.Order?.Effort ?? Effort.Standard);
        using CancellationTokenSource deadline = CancellationTokenSource.CreateLinkedTokenSource(stop);
        deadline.CancelAfter(limit);
        try
        {
            return desk.Handle(received, Purposes.Quote, deadline.Token);
        }
        catch (OperationCanceledException) when (!stop.IsCancellationRequested)
        {
            return OrderDispatcher.TooSlow(limit);
        }
    }

    private static Refusal TooLong() => new([new Violation("", "order-too-long", StreamTexts.OrderTooLong(Limits.OrderBytes))]);
}
