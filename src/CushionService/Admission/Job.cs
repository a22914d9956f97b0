using System.Diagnostics;

namespace CushionService.Admission;

/// <summary>A piece of work that waits for a worker.</summary>
internal abstract class Job
{
    /// <summary>When it came, in ticks of <see cref="Stopwatch"/>.</summary>
    public long Came { get; } = Stopwatch.GetTimestamp();

    /// <summary>Does the work. Its exceptions are its caller's.</summary>
    /// <param name="ending">Ends it when its time is up, or its caller gives up.</param>
    public abstract void Do(Deadline ending);
}

/// <summary>A piece of work with an answer.</summary>
/// <param name="work">The work.</param>
/// <param name="time">How long it may take, from when it came or, for work that waits its turn, from when it began.</param>
/// <param name="fromTurn">Whether its time is counted from when it began.</param>
/// <param name="cancellation">Gives it up, also while it waits.</param>
internal sealed class Job<T>(Func<CancellationToken, T> work, TimeSpan time, bool fromTurn, CancellationToken cancellation) : Job
{
    // The caller goes on on a thread of its own: a worker is for orders.
    private readonly TaskCompletionSource<T> _answer = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly ExecutionContext? _context = ExecutionContext.Capture();
    private Deadline? _ending;

    /// <summary>The answer.</summary>
    public Task<T> Answer => _answer.Task;

    public override void Do(Deadline ending)
    {
        _ending = ending;
        if (_context is null)
        {
            Work();
        }
        else
        {
            ExecutionContext.Run(_context, static job => ((Job<T>)job!).Work(), this);
        }
    }

    private void Work()
    {
        bool ran = !fromTurn && time != Timeout.InfiniteTimeSpan;
        TimeSpan waited = Stopwatch.GetElapsedTime(Came);
        if (cancellation.IsCancellationRequested || (ran && waited >= time))
        {
            _answer.SetCanceled(cancellation);
            return;
        }

        try
        {
            _answer.SetResult(_ending!.Within(ran ? time - waited : time, work, cancellation));
        }
        catch (OperationCanceledException given)
        {
            _answer.SetCanceled(given.CancellationToken);
        }
        catch (Exception fault)
        {
            _answer.SetException(fault);
        }
    }
}
