using System.Diagnostics;

namespace CushionService.Nesting.Search;

/// <summary>Counts the steps of a search, so that effort is a number and never a time, and looks for the caller's
/// cancellation now and then. One step is one fit that was weighed.</summary>
internal sealed class StepBudget(long limit, CancellationToken cancellation)
{
    // About 0.1 ms.
    private const long BetweenLooks = 1 << 14;

    // For each copy, and for all copies at most.
    private const long QuickShare = 15_000;
    private const long QuickMost = 3_000_000;
    private const long StandardShare = 500_000;
    private const long StandardMost = 75_000_000;
    private const long ThoroughShare = 15_000_000;
    private const long ThoroughMost = 600_000_000;

    private long _nextLook = BetweenLooks;

    /// <summary>Steps spent so far.</summary>
    public long Spent { get; private set; }

    /// <summary>Steps that may be spent in all.</summary>
    public long Limit => limit;

    /// <summary>Whether the steps are used up.</summary>
    public bool Exhausted => Spent >= limit;

    /// <summary>The steps of an effort for a number of copies; none for no effort, which is a single pass.</summary>
    public static long StepsFor(Effort? effort, int copies) =>
        effort switch
        {
            null => 0,
            Effort.Quick => Math.Min(copies * QuickShare, QuickMost),
            Effort.Standard => Math.Min(copies * StandardShare, StandardMost),
            _ => Math.Min(copies * ThoroughShare, ThoroughMost),
        };

    /// <summary>Looks for the caller's cancellation at once, before work that takes long for its steps.</summary>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public void Look() => cancellation.ThrowIfCancellationRequested();

    /// <summary>Counts steps.</summary>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
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
