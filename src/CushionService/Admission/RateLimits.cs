using System.Threading.RateLimiting;
using CushionService.Access;

namespace CushionService.Admission;

/// <summary>How often each caller may call (token bucket), and how many streams it may have open.</summary>
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
                QueueLimit = 0,
            }
        )
    );

    private readonly PartitionedRateLimiter<Caller> _streams = PartitionedRateLimiter.Create<Caller, (string, int)>(caller =>
        RateLimitPartition.GetConcurrencyLimiter(
            (caller.Name, caller.Grant.Streams),
            static key => new ConcurrencyLimiterOptions { PermitLimit = key.Item2 }
        )
    );

    /// <summary>Counts a call, and reports in the header what is left of the burst (draft-ietf-httpapi-ratelimit-headers-10).</summary>
    /// <returns>Whether the caller may make it.</returns>
    public bool Take(Caller caller, HttpResponse response)
    {
        using RateLimitLease lease = _calls.AttemptAcquire(caller);
        Grant grant = caller.Grant;
        long left = _calls.GetStatistics(caller)?.CurrentAvailablePermits ?? 0;
        response.Headers["RateLimit-Policy"] = $"\"calls\";q={grant.Rate};w=1, \"burst\";q={grant.Burst}";
        response.Headers["RateLimit"] = $"\"burst\";r={left};t={(grant.Burst - left + grant.Rate - 1) / grant.Rate}";
        return lease.IsAcquired;
    }

    /// <summary>Opens a stream; the lease closes it.</summary>
    public RateLimitLease OpenStream(Caller caller) => _streams.AttemptAcquire(caller);

    public void Dispose()
    {
        _calls.Dispose();
        _streams.Dispose();
    }
}
