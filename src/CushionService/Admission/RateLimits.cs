using System.Threading.RateLimiting;
using CushionService.Access;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>How often each caller may call (token bucket), and how many streams it may have open. The limits are those of this
/// instance: two instances behind a balancer admit twice as much, except of calls where the instances share their buckets.</summary>
/// <param name="options">The limits of what needs no scope.</param>
/// <param name="shared">The buckets that instances share; null where they share none.</param>
/// <remarks>The limits are part of each partition's key, so that a grant that is configured anew takes effect with the
/// next call.</remarks>
internal sealed class RateLimits(IOptions<AdmissionOptions> options, SharedBuckets? shared = null) : IDisposable
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

    // By address, since who asks for a page shows no key.
    private readonly PartitionedRateLimiter<string> _pages = PartitionedRateLimiter.Create<string, string>(address =>
        RateLimitPartition.GetTokenBucketLimiter(
            address,
            _ => new TokenBucketRateLimiterOptions
            {
                TokenLimit = options.Value.PageBurst,
                TokensPerPeriod = options.Value.PageRate,
                ReplenishmentPeriod = TimeSpan.FromSeconds(1),
            }
        )
    );

    /// <summary>Counts a request for what needs no scope.</summary>
    /// <param name="address">Where it comes from.</param>
    /// <returns>Whether the address may make it.</returns>
    public bool TakePage(string address)
    {
        using RateLimitLease lease = _pages.AttemptAcquire(address);
        return lease.IsAcquired;
    }

    /// <summary>Counts a call, and reports what is left of the burst in the headers
    /// (draft-ietf-httpapi-ratelimit-headers-10).</summary>
    /// <param name="caller">Who calls.</param>
    /// <param name="response">Gets the headers, whether the call is admitted or not.</param>
    /// <param name="isPublic">Whether the answer is one that caches keep for others; then only a rejection has the
    /// headers.</param>
    /// <returns>Whether the caller may make the call.</returns>
    public async ValueTask<bool> TakeAsync(Caller caller, HttpResponse response, bool isPublic)
    {
        Grant grant = caller.Grant;
        (bool taken, long left) =
            shared is not null && await shared.TakeAsync(caller.Name, grant.Rate, grant.Burst) is { } kept ? kept : TakeHere(caller);
        if (isPublic && taken)
        {
            return true;
        }

        LimitHeaders.Calls(response, grant, left);
        return taken;
    }

    /// <summary>Opens a stream if the caller may have one more. Disposing of the lease closes it.</summary>
    /// <param name="caller">Who opens it.</param>
    /// <returns>A lease that says whether it is granted; it must be disposed of in either case.</returns>
    public RateLimitLease OpenStream(Caller caller) => _streams.AttemptAcquire(caller);

    /// <summary>Ends the timers that refill the buckets.</summary>
    public void Dispose()
    {
        _calls.Dispose();
        _streams.Dispose();
        _pages.Dispose();
    }

    private (bool Taken, long Left) TakeHere(Caller caller)
    {
        using RateLimitLease lease = _calls.AttemptAcquire(caller);
        return (lease.IsAcquired, _calls.GetStatistics(caller)?.CurrentAvailablePermits ?? 0);
    }
}
