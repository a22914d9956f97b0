using System.Diagnostics;
using CushionService.Access;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Engine.Specifications;
using CushionService.Metrics;
using CushionService.Nesting;
using CushionService.Rejections;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>Sends an order to the desk when it has its turn: within what its caller may ask for, and within the deadline.
/// REST, gRPC and streams all send their orders here.</summary>
/// <param name="desk">Answers the orders.</param>
/// <param name="turns">The workers, and who waits for them.</param>
/// <param name="work">What is charged for an order.</param>
/// <param name="retry">When a caller may send an order again.</param>
/// <param name="options">The deadlines.</param>
internal sealed class OrderDispatcher(OrderDesk desk, Turns turns, WorkLimits work, RetryDelay retry, IOptions<AdmissionOptions> options)
{
    private readonly AdmissionOptions _options = options.Value;

    /// <summary>Has an order answered, and counts the outcome.</summary>
    /// <param name="caller">Who sends the order.</param>
    /// <param name="received">The order as it arrived.</param>
    /// <param name="purpose">What it is sent for.</param>
    /// <param name="cancellation">The caller's.</param>
    /// <param name="inTurn">Whether it is an order of a stream, which waits as long as it takes and is never rejected as
    /// busy; its time runs from its turn.</param>
    /// <returns>The answer, or a refusal: of what the grant does not cover (not-allowed), of a broken rule, for want of a
    /// turn (busy), or at the deadline (too-slow).</returns>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    /// <typeparam name="TAnswer">The record of the contract that answers.</typeparam>
    /// <remarks>Every outcome is counted once here, so calls and streams share one metric.</remarks>
    public async Task<Outcome<TAnswer>> HandleAsync<TAnswer>(
        Caller caller,
        ReceivedOrder received,
        Purpose<TAnswer> purpose,
        CancellationToken cancellation,
        bool inTurn = false
    )
        where TAnswer : class
    {
        try
        {
            return Counted(await AnswerAsync(caller, Allowed(caller, received, purpose, inTurn), purpose, inTurn, cancellation));
        }
        finally
        {
            // The call goes on on the thread pool, whatever came of the order: a worker is for orders.
            await Task.Yield();
        }
    }

    // The order at its caller's prices, and what of it goes beyond its caller's grant: the desk reports that beside the broken rules.
    private static ReceivedOrder Allowed<TAnswer>(Caller caller, ReceivedOrder received, Purpose<TAnswer> purpose, bool inTurn)
        where TAnswer : class
    {
        if (received.Order is not { } order)
        {
            return received;
        }

        IReadOnlyList<Violation> forbidden = caller.Forbids(order, overnight: caller.IsKnown && inTurn, purpose.UsualEffort);
        return caller.Priced(received) with { Forbidden = forbidden.Count == 0 ? null : forbidden };
    }

    private static Outcome<TAnswer> Counted<TAnswer>(Outcome<TAnswer> outcome)
        where TAnswer : class
    {
        OrderMetrics.Count(outcome.Refusal);
        return outcome;
    }

    private async Task<Outcome<TAnswer>> AnswerAsync<TAnswer>(
        Caller caller,
        ReceivedOrder received,
        Purpose<TAnswer> purpose,
        bool inTurn,
        CancellationToken cancellation
    )
        where TAnswer : class
    {
        long arrived = Stopwatch.GetTimestamp();
        // What is forbidden is not laid out: it waits no longer than the shortest search.
        Effort effort = received.Forbidden is null ? received.Order?.Effort ?? purpose.UsualEffort ?? Effort.Standard : Effort.Quick;
        // A call that owes was rejected by AdmissionControl; an order of a stream waits until the debt is paid.
        if (inTurn)
        {
            await work.WaitAsync(caller, cancellation);
        }

        using Turn turn = await turns.TakeAsync(caller, inTurn, _options.LongestWaitOf(effort), cancellation);
        long began = Stopwatch.GetTimestamp();
        QueueMetrics.Waited(began - arrived);
        if (!turn.IsGiven)
        {
            return Busy();
        }

        TimeSpan limit = _options.DeadlineOf(effort);
        // A call that spent its deadline in the queue is not begun: nobody waits for its answer any more.
        TimeSpan left = inTurn ? limit : limit - Stopwatch.GetElapsedTime(arrived, began);
        if (left <= TimeSpan.Zero)
        {
            return TooSlow(limit);
        }

        try
        {
            using CancellationTokenSource deadline = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
            deadline.CancelAfter(left);
            return desk.Handle(received, purpose, deadline.Token);
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            // What the caller has not cancelled, the deadline has.
            return TooSlow(limit);
        }
        finally
        {
            TimeSpan took = Stopwatch.GetElapsedTime(began);
            // Failed and cancelled orders count as well: they had the worker for as long.
            turns.Took(took);
            work.Charge(caller, took + received.Reading);
        }
    }

    // The same order is welcome a little later.
    private Refusal Busy() => new([new Violation("", "busy", AdmissionTexts.Busy)]) { RetryAfterSeconds = retry.NextSeconds() };

    /// <summary>The refusal of an order that was cancelled at its deadline. The same order would take as long again: it is the order that
    /// must change, not the moment.</summary>
    /// <param name="time">The deadline.</param>
    public static Refusal TooSlow(TimeSpan time) =>
        new([new Violation("", "too-slow", AdmissionTexts.TooSlow((long)Math.Round(time.TotalSeconds)), null, time.TotalSeconds)]);
}
