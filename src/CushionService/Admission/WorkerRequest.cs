namespace CushionService.Admission;

/// <summary>A place in the queue for a worker, and then the worker itself, which is kept until this is disposed
/// of.</summary>
/// <remarks>Its continuations are not sent to the thread pool: who waits for the worker goes on on the worker's
/// thread.</remarks>
/// <param name="workers">Whose worker it is.</param>
internal sealed class WorkerRequest(Workers workers) : TaskCompletionSource<WorkerRequest?>, IDisposable
{
    private readonly object _lock = new();
    private bool _disposed;

    /// <summary>Gives the worker, and waits until it is given back: mostly it has been by then, and the order is done.
    /// </summary>
    public void Serve()
    {
        // Its caller may have left the queue.
        if (!TrySetResult(this))
        {
            workers.Free();
            return;
        }

        lock (_lock)
        {
            while (!_disposed)
            {
                Monitor.Wait(_lock);
            }
        }
    }

    /// <summary>Waits for the worker.</summary>
    /// <param name="cancellation">Ends the wait at once, also where all workers are at long orders.</param>
    /// <returns>The worker; null when the service ends.</returns>
    /// <exception cref="OperationCanceledException">The wait was ended.</exception>
    public async ValueTask<WorkerRequest?> WaitAsync(CancellationToken cancellation)
    {
        using CancellationTokenRegistration end = cancellation.UnsafeRegister(
            static (request, token) => ((WorkerRequest)request!).TrySetCanceled(token),
            this
        );
        return await Task;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock)
        {
            if (_disposed)
            {
                return;
            }

            _disposed = true;
            Monitor.Pulse(_lock);
        }

        workers.Free();
    }
}
