namespace CushionService.Nesting.Rectangles;

/// <summary>Counts the steps of a search, so that effort is a number and never a time, and looks for the caller's
/// cancellation now and then. One step is one fit that was weighed.</summary>
internal sealed class StepBudget(long limit, CancellationToken cancellation)
{
    private const long BetweenLooks = 1 << 18;
    private long _nextLook = BetweenLooks;

    /// <summary>Steps spent so far.</summary>
    public long Spent { get; private set; }

    /// <summary>Steps that may be spent in all.</summary>
    public long Limit => limit;

    /// <summary>Whether the steps are used up.</summary>
    public bool Exhausted => Spent >= limit;

    /// <summary>Counts steps.</summary>
    /// <exception cref="OperationCanceledException">The caller gave up.</exception>
    public void Spend(long steps)
    {
        Spent += steps;
        if (Spent >= _nextLook)
        {
            _nextLook = Spent + BetweenLooks;
            cancellation.ThrowIfCancellationRequested();
        }
    }
}
