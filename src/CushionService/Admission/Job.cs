using System.Diagnostics;

namespace CushionService.Admission;

/// <summary>Work that waits in the queue for a worker thread, with a deadline.</summary>
/// <param name="time">How long the work may take; <see cref="Timeout.InfiniteTimeSpan"/> for no limit.</param>
/// <param name="inTurn">Whether the time runs from when a worker begins, as for the orders of a stream, and not from
/// when the work arrived. A caller that waits for one answer counts the time in the queue; one that sends thousands of
/// orders does not.</param>
/// <param name="cancellation">The caller's: cancels the work, also while it waits.</param>
internal abstract class Job(TimeSpan time, bool inTurn, CancellationToken cancellation)
{
    /// <summary>Whether the work is an order of a stream, which waits its turn.</summary>
    public bool InTurn { get; } = inTurn;

    /// <summary>When the work arrived, in ticks of <see cref="Stopwatch"/>.</summary>
    public long Arrived { get; } = Stopwatch.GetTimestamp();

    /// <summary>Does the work on the thread of a worker; work that is cancelled or past its deadline is not begun.
    /// Never throws: failures go to the caller that waits for the answer.</summary>
    public void Run()
    {
        bool limited = time != Timeout.InfiniteTimeSpan;
        TimeSpan left = InTurn || !limited ? time : time - Stopwatch.GetElapsedTime(Arrived);
        if (cancellation.IsCancellationRequested || (limited && left <= TimeSpan.Zero))
        {
            Cancel(cancellation);
            return;
        }

        using CancellationTokenSource deadline = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        deadline.CancelAfter(left);
        Work(deadline.Token);
    }

    /// <summary>Does the work, and passes its answer or its exception to the caller.</summary>
    /// <param name="deadline">Cancelled when the time is up, or by the caller.</param>
    protected abstract void Work(CancellationToken deadline);

    /// <summary>Tells the caller that the work was cancelled before it began.</summary>
    /// <param name="cancellation">The caller's token; not cancelled when the deadline has passed.</param>
    protected abstract void Cancel(CancellationToken cancellation);
}
