using System.Threading.RateLimiting;
using CushionService.Access;

namespace CushionService.Admission;

/// <summary>How much work each caller may have done: steps of search, in a token bucket. An order is charged when it is
/// done, since nobody knows before what it takes; a caller that has had more done than its grant covers waits until the
/// rest is paid.</summary>
/// <remarks>Steps are counted by the time of a worker: a step takes about <see cref="NanosecondsPerStep"/> on one core.
/// So what is not search costs as well (drafting, wording, documents), and so do the many small searches of fits and
/// comparisons.</remarks>
internal sealed class WorkLimits : IDisposable
{
    /// <summary>Steps of a permit of the bucket.</summary>
    public const int StepsPerPermit = 10_000;

    /// <summary>What a step of search takes, as <c>RectangleSteps</c> has it.</summary>
    public const int NanosecondsPerStep = 6;

    private const int PermitsPerMillion = 1_000_000 / StepsPerPermit;

    private readonly PartitionedRateLimiter<Caller> _work = PartitionedRateLimiter.Create<Caller, (string, int, int)>(caller =>
        RateLimitPartition.GetTokenBucketLimiter(
            (caller.Name, caller.Grant.Steps, caller.Grant.StepsBurst),
            static key => new TokenBucketRateLimiterOptions
            {
                TokensPerPeriod = key.Item2 * PermitsPerMillion,
                TokenLimit = key.Item3 * PermitsPerMillion,
                ReplenishmentPeriod = TimeSpan.FromSeconds(1),
                // What is owed waits here to be paid. A caller that owes can begin nothing.
                QueueLimit = int.MaxValue,
                QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
            }
        )
    );

    /// <summary>Whether a caller may have an order worked on.</summary>
    /// <param name="caller">Who calls.</param>
    /// <param name="seconds">When not, the seconds until what it owes is paid.</param>
    /// <returns>Whether nothing is owed; it takes the permit with which the order begins.</returns>
    public bool MayBegin(Caller caller, out int seconds)
    {
        using RateLimitLease lease = _work.AttemptAcquire(caller);
        RateLimiterStatistics? left = lease.IsAcquired ? null : _work.GetStatistics(caller);
        seconds = left is null
            ? 0
            : (int)
                Math.Clamp((left.CurrentQueuedCount - left.CurrentAvailablePermits) / (caller.Grant.Steps * PermitsPerMillion), 1, 3_600);
        return lease.IsAcquired;
    }

    /// <summary>Waits until a caller owes nothing, as the orders of streams do.</summary>
    /// <param name="caller">Who sends the stream.</param>
    /// <param name="cancellation">The caller's.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public async ValueTask WaitAsync(Caller caller, CancellationToken cancellation)
    {
        using RateLimitLease lease = await _work.AcquireAsync(caller, 1, cancellation);
    }

    /// <summary>Charges a caller for an order that is done.</summary>
    /// <param name="caller">Who sent it.</param>
    /// <param name="time">How long a worker had it.</param>
    public void Charge(Caller caller, TimeSpan time)
    {
        // The permit with which it began is part of it.
        long permits = (long)(time.TotalNanoseconds / NanosecondsPerStep / StepsPerPermit) - 1;
        // A limiter takes no more at once than its bucket holds, so a large debt is queued in parts.
        long most = (long)caller.Grant.StepsBurst * PermitsPerMillion;
        for (; permits > 0; permits -= most)
        {
            // Waits to be paid, without anybody who waits for it.
            _ = _work.AcquireAsync(caller, (int)Math.Min(permits, most)).AsTask();
        }
    }

    /// <summary>Ends the timers that refill the buckets.</summary>
    public void Dispose() => _work.Dispose();
}
