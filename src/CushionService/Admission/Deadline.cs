namespace CushionService.Admission;

/// <summary>Ends a worker's work when its time is up, or its caller gives up. One source of cancellation and its timer serve order after
/// order until one is ended: an order that is done in microseconds would wait for the making of its own.</summary>
internal sealed class Deadline : IDisposable
{
    private CancellationTokenSource _source = new();

    /// <summary>Does work.</summary>
    /// <param name="time">How long it may take.</param>
    /// <param name="work">The work.</param>
    /// <param name="cancellation">Its caller gives up.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public T Within<T>(TimeSpan time, Func<CancellationToken, T> work, CancellationToken cancellation)
    {
        _source.CancelAfter(time);
        try
        {
            // The registration is taken back before the source serves the next order: it waits for a caller that gives up this very moment.
            using CancellationTokenRegistration given = cancellation.UnsafeRegister(
                static source => ((CancellationTokenSource)source!).Cancel(),
                _source
            );
            return work(_source.Token);
        }
        finally
        {
            if (!_source.TryReset())
            {
                _source.Dispose();
                _source = new CancellationTokenSource();
            }
        }
    }

    public void Dispose() => _source.Dispose();
}
