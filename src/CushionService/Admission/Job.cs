using System.Diagnostics;

namespace CushionService.Admission;

/// <summary>A piece of work that waits for a hand.</summary>
internal abstract class Job
{
    /// <summary>When it came, in ticks of <see cref="Stopwatch"/>.</summary>
    public long Came { get; } = Stopwatch.GetTimestamp();

    /// <summary>Does the work. Its exceptions are its caller's.</summary>
    public abstract void Do();
}

/// <summary>A piece of work with an answer.</summary>
/// <param name="work">The work.</param>
/// <param name="cancellation">Gives it up, also while it waits.</param>
internal sealed class Job<T>(Func<CancellationToken, T> work, CancellationToken cancellation) : Job
{
    // The caller goes on on a thread of its own: a hand is for orders.
    private readonly TaskCompletionSource<T> _answer = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly ExecutionContext? _context = ExecutionContext.Capture();

    /// <summary>The answer.</summary>
    public Task<T> Answer => _answer.Task;

    public override void Do()
    {
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
        try
        {
            cancellation.ThrowIfCancellationRequested();
            _answer.SetResult(work(cancellation));
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
