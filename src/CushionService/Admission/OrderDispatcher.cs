using CushionService.Access;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Engine.Specifications;
using CushionService.Metrics;
using CushionService.Nesting;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>Sends an order to the desk by way of the worker pool: within what its caller may ask for, and within the
/// deadline. REST, gRPC and streams all send their orders here.</summary>
/// <param name="desk">Answers the orders.</param>
/// <param name="pool">The workers.</param>
/// <param name="retry">When a caller may send an order again.</param>
/// <param name="options">The deadlines.</param>
internal sealed class OrderDispatcher(OrderDesk desk, WorkerPool pool, RetryDelay retry, IOptions<AdmissionOptions> options)
{
    private readonly TimeSpan _deadline = TimeSpan.FromSeconds(options.Value.DeadlineSeconds);
    private readonly TimeSpan _overnightDeadline = TimeSpan.FromSeconds(options.Value.OvernightDeadlineSeconds);

    /// <summary>Has a worker answer an order, and counts the outcome.</summary>
    /// <param name="caller">Who sends the order.</param>
    /// <param name="received">The order as it arrived.</param>
    /// <param name="purpose">What it is sent for.</param>
    /// <param name="cancellation">The caller's.</param>
    /// <param name="inTurn">Whether it is an order of a stream, which waits its turn in a queue without an end and is
    /// never rejected as busy.</param>
    /// <returns>The answer, or a refusal: of what the grant does not cover (not-allowed), of a broken rule, for a full
    /// queue (busy), or at the deadline (too-slow).</returns>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public async Task<Outcome<TAnswer>> HandleAsync<TAnswer>(
        Caller caller,
        ReceivedOrder received,
        Purpose<TAnswer> purpose,
        CancellationToken cancellation,
        bool inTurn = false
    )
        where TAnswer : class
    {
        TimeSpan time = received.Order?.Effort == Effort.Overnight ? _overnightDeadline : _deadline;
        OrderJob<TAnswer> job = new(desk, received, purpose, time, inTurn, cancellation);
        Outcome<TAnswer> outcome;
        if (received.Order is { } order && caller.Grant.Forbids(order, caller.IsKnown && inTurn) is { Count: > 0 } forbidden)
        {
            outcome = new Refusal(forbidden);
        }
        else if (!pool.TryEnqueue(job))
        {
            outcome = Busy();
        }
        else
        {
            try
            {
                outcome = await job.Outcome;
            }
            catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
            {
                // What the caller has not cancelled, the deadline has.
                outcome = TooSlow(time);
            }
        }

        OrderMetrics.Count(outcome.Refusal);
        return outcome;
    }

    // The same order is welcome a little later.
    private Refusal Busy() => new([new Violation("", "busy", AdmissionTexts.Busy)]) { RetryAfterSeconds = retry.NextSeconds() };

    // The same order would take as long again: it is the order that must change, not the moment.
    private static Refusal TooSlow(TimeSpan time) =>
        new([new Violation("", "too-slow", AdmissionTexts.TooSlow((long)Math.Round(time.TotalSeconds)), null, time.TotalSeconds)]);
}
