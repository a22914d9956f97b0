using System.Diagnostics;

namespace CushionService.Nesting.Search;

/// <summary>Counts the steps of a search, so that effort is a number and never a time, and looks for the caller's
/// cancellation now and then. One step is one fit that was weighed.</summary>
/// <param name="limit">Steps that may be spent.</param>
/// <param name="cancellation">The caller's.</param>
internal sealed class StepBudget(long limit, CancellationToken cancellation)
{
    // About 0.1 ms.
    private const long BetweenLooks = 1 << 14;

    private long _nextLook = BetweenLooks;

    /// <summary>Steps spent so far.</summary>
    public long Spent { get; private set; }

    /// <summary>Steps that may be spent in all.</summary>
    public long Limit => limit;

    /// <summary>Whether the steps are used up.</summary>
    public bool Exhausted => Spent >= limit;

    /// <summary>Looks for the caller's cancellation at once, before work that takes long for its steps.</summary>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public void Look() => cancellation.ThrowIfCancellationRequested();

    /// <summary>Counts steps.</summary>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    /// <param name="steps">At least 0.</param>
    public void Spend(long steps)
    {
        Debug.Assert(steps >= 0, "Steps are given back.");
        Spent += steps;
        if (Spent >= _nextLook)
        {
            _nextLook = Spent + BetweenLooks;
            cancellation.ThrowIfCancellationRequested();
        }
    }
}
