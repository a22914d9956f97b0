using System.Threading.RateLimiting;
using CushionService.Access;

namespace CushionService.Admission;

/// <summary>How often each caller may call (token bucket), and how many streams it may have open. The limits are those
/// of this instance: two instances behind a balancer admit twice as much.</summary>
/// <remarks>The limits are part of each partition's key, so that a grant that is configured anew takes effect with the
/// next call.</remarks>
internal sealed class RateLimits : IDisposable
{
    private readonly PartitionedRateLimiter<Caller> _calls = PartitionedRateLimiter.Create<Caller, (string, int, int)>(caller =>
        RateLimitPartition.GetTokenBucketLimiter(
            (caller.Name, caller.Grant.Rate, caller.Grant.Burst),
            static key => new TokenBucketRateLimiterOptions
            {
                TokenLimit = key.Item3,
                TokensPerPeriod = key.Item2,
                ReplenishmentPeriod = TimeSpan.FromSeconds(1),
                // A call beyond the limit is rejected at once: waiting is up to the caller.
                QueueLimit = 0,
            }
        )
    );

    // A permit is held for as long as the stream is open.
    private readonly PartitionedRateLimiter<Caller> _streams = PartitionedRateLimiter.Create<Caller, (string, int)>(caller =>
        RateLimitPartition.GetConcurrencyLimiter(
            (caller.Name, caller.Grant.Streams),
            static key => new ConcurrencyLimiterOptions { PermitLimit = key.Item2 }
        )
    );

    /// <summary>Counts a call, and reports what is left of the burst in the headers
    /// (draft-ietf-httpapi-ratelimit-headers-10).</summary>
    /// <param name="caller">Who calls.</param>
    /// <param name="response">Gets the headers, whether the call is admitted or not.</param>
    /// <returns>Whether the caller may make the call.</returns>
    public bool Take(Caller caller, HttpResponse response)
    {
        using RateLimitLease lease = _calls.AttemptAcquire(caller);
        Grant grant = caller.Grant;
        // The window says in how many seconds the whole burst is available again: what is used, over the rate, rounded
        // up.
        long left = _calls.GetStatistics(caller)?.CurrentAvailablePermits ?? 0;
        response.Headers["RateLimit-Policy"] = $"\"calls\";q={grant.Rate};w=1, \"burst\";q={grant.Burst}";
        response.Headers["RateLimit"] = $"\"burst\";r={left};t={(grant.Burst - left + grant.Rate - 1) / grant.Rate}";
        return lease.IsAcquired;
    }

    /// <summary>Opens a stream if the caller may have one more. Disposing of the lease closes it.</summary>
    public RateLimitLease OpenStream(Caller caller) => _streams.AttemptAcquire(caller);

    /// <summary>Ends the timers that refill the buckets.</summary>
    public void Dispose()
    {
        _calls.Dispose();
        _streams.Dispose();
    }
}
