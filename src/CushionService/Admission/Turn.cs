using System.Threading.RateLimiting;

namespace CushionService.Admission;

/// <summary>A turn with a worker, or that there was none. Disposing of it gives the worker back.</summary>
/// <param name="Shares">The caller's and its group's part in the workers.</param>
/// <param name="Worker">The worker; null when the queue was full or the wait too long.</param>
internal readonly record struct Turn(RateLimitLease? Shares, WorkerRequest? Worker) : IDisposable
{
    /// <summary>Whether there is a worker.</summary>
    public bool IsGiven => Worker is not null;

    /// <summary>Gives the worker back, and then the share.</summary>
    public void Dispose()
    {
        Worker?.Dispose();
        Shares?.Dispose();
    }
}
