using CushionService.Admission;

namespace CushionService.Tests.Admission;

/// <summary>Work of a test in the queue of the pool.</summary>
internal sealed class TestJob<T>(Func<CancellationToken, T> work, TimeSpan time, bool inTurn, CancellationToken cancellation)
    : Job(time, inTurn, cancellation)
{
    private readonly TaskCompletionSource<T> _done = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public Task<T> Done => _done.Task;

    protected override void Work(CancellationToken deadline)
    {
        try
        {
            _done.SetResult(work(deadline));
        }
        catch (OperationCanceledException cancelled)
        {
            _done.SetCanceled(cancelled.CancellationToken);
        }
    }

    protected override void Cancel(CancellationToken cancellation) => _done.SetCanceled(cancellation);
}
