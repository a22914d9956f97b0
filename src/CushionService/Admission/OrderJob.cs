using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Desk;

namespace CushionService.Admission;

/// <summary>An order in the queue, and what it is sent for.</summary>
/// <param name="desk">Answers it.</param>
/// <param name="order">The order as it arrived.</param>
/// <param name="purpose">What it is sent for.</param>
/// <param name="time">How long the answer may take.</param>
/// <param name="inTurn">Whether that time runs from when a worker begins, and not from when the order arrived.</param>
/// <param name="cancellation">The caller's.</param>
internal sealed class OrderJob<TAnswer>(
    OrderDesk desk,
    ReceivedOrder order,
    Purpose<TAnswer> purpose,
    TimeSpan time,
    bool inTurn,
    CancellationToken cancellation
) : Job(time, inTurn, cancellation)
    where TAnswer : class
{
    // The caller continues on the thread pool: a worker thread is for orders.
    private readonly TaskCompletionSource<Outcome<TAnswer>> _outcome = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>What becomes of the order. Cancelled when the caller cancels, or at the deadline.</summary>
    public Task<Outcome<TAnswer>> Outcome => _outcome.Task;

    /// <inheritdoc/>
    protected override void Work(CancellationToken deadline)
    {
        try
        {
            _outcome.SetResult(desk.Handle(order, purpose, deadline));
        }
        catch (OperationCanceledException cancelled)
        {
            _outcome.SetCanceled(cancelled.CancellationToken);
        }
        catch (Exception exception)
        {
            _outcome.SetException(exception);
        }
    }

    /// <inheritdoc/>
    protected override void Cancel(CancellationToken cancellation) => _outcome.SetCanceled(cancellation);
}
