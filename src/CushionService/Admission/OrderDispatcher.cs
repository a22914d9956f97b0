using CushionService.Access;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Metrics;
using CushionService.Nesting;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>Sends the work of an order to the pool, for both doors: within what its caller may ask for, and within the time that there
/// is.</summary>
internal sealed class OrderDispatcher(WorkerPool pool, IOptions<AdmissionOptions> options)
{
    private static readonly Refusal Busy = new([
        new Violation("", "busy", "The service has more to do than it can; send the order again later."),
    ]);
    private readonly TimeSpan _time = TimeSpan.FromSeconds(options.Value.DeadlineSeconds);
    private readonly TimeSpan _overnight = TimeSpan.FromSeconds(options.Value.OvernightDeadlineSeconds);

    /// <summary>Works on a call's order.</summary>
    /// <param name="caller">Who asks.</param>
    /// <param name="reading">The order.</param>
    /// <param name="work">What is asked of it.</param>
    /// <param name="cancellation">The caller gave up.</param>
    /// <exception cref="OperationCanceledException">The caller gave up.</exception>
    public Task<Outcome<T>> DoAsync<T>(
        Caller caller,
        ReceivedOrder reading,
        Func<ReceivedOrder, CancellationToken, Outcome<T>> work,
        CancellationToken cancellation
    )
        where T : class => DoAsync(caller, reading, work, inTurn: false, cancellation);

    /// <summary>Works on an order of a stream, which waits for its turn and is not turned away.</summary>
    public Task<Outcome<T>> DoInTurnAsync<T>(
        Caller caller,
        ReceivedOrder reading,
        Func<ReceivedOrder, CancellationToken, Outcome<T>> work,
        CancellationToken cancellation
    )
        where T : class => DoAsync(caller, reading, work, inTurn: true, cancellation);

    private async Task<Outcome<T>> DoAsync<T>(
        Caller caller,
        ReceivedOrder reading,
        Func<ReceivedOrder, CancellationToken, Outcome<T>> work,
        bool inTurn,
        CancellationToken cancellation
    )
        where T : class
    {
        Outcome<T> outcome;
        if (reading.Order is { } order && caller.Grant.Forbids(order, caller.IsKnown && inTurn) is { Count: > 0 } forbidden)
        {
            outcome = new Refusal(forbidden);
        }
        else
        {
            try
            {
                TimeSpan time = TimeOf(reading);
                Task<Outcome<T>>? answer = inTurn ? pool.DoInTurn(Work, cancellation, time) : pool.TryDo(Work, cancellation, time);
                outcome = answer is null ? Busy : await answer;
            }
            catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
            {
                outcome = TooSlow(TimeOf(reading));
            }
        }

        if (outcome.Answered)
        {
            OrderMetrics.Count();
        }
        else
        {
            OrderMetrics.Count(outcome.Refusal);
        }

        return outcome;

        Outcome<T> Work(CancellationToken ending) => work(reading, ending);
    }

    private TimeSpan TimeOf(ReceivedOrder reading) => reading.Order?.Effort == Effort.Overnight ? _overnight : _time;

    // The same order would take as long again: it is the order that must change, not the moment.
    private static Refusal TooSlow(TimeSpan time) =>
        new([
            new Violation(
                "",
                "too-slow",
                $"The order had no answer after {time.TotalSeconds:0} seconds, which is the limit. "
                    + "Send fewer pieces in one order, or ask for the effort quick.",
                null,
                time.TotalSeconds
            ),
        ]);
}
