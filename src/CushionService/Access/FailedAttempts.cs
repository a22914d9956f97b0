using System.Diagnostics.Metrics;
using System.Threading.RateLimiting;
using CushionService.Metrics;

namespace CushionService.Access;

/// <summary>How often an address may come with a key or a token that is not valid: one a second, and twenty at once. A key
/// cannot be guessed; this keeps the verifying of made-up tokens cheap.</summary>
internal sealed class FailedAttempts : IDisposable
{
    private static readonly Counter<long> Calls = ServiceMeter.Meter.CreateCounter<long>(
        "cushionservice.access.failures",
        "{call}",
        "Calls with a key or a token that is not valid."
    );

    private static readonly Counter<long> Authority = ServiceMeter.Meter.CreateCounter<long>(
        "cushionservice.authority.failures",
        "{attempt}",
        "Attempts to fetch the keys of the authority of tokens that failed."
    );

    private readonly PartitionedRateLimiter<string> _left = PartitionedRateLimiter.Create<string, string>(address =>
        RateLimitPartition.GetTokenBucketLimiter(
            address,
            static _ => new TokenBucketRateLimiterOptions
            {
                TokenLimit = 20,
                TokensPerPeriod = 1,
                ReplenishmentPeriod = TimeSpan.FromSeconds(1),
            }
        )
    );

    /// <summary>Whether an address has failed too often of late. What it sends is not looked at then.</summary>
    /// <param name="address">As <see cref="CallerAddress"/> has it.</param>
    public bool IsBarred(string address) => _left.GetStatistics(address) is { CurrentAvailablePermits: 0 };

    /// <summary>Counts a failure.</summary>
    /// <param name="address">As <see cref="CallerAddress"/> has it.</param>
    public void Count(string address)
    {
        Calls.Add(1);
        _left.AttemptAcquire(address).Dispose();
    }

    /// <summary>Counts that the authority of tokens did not answer.</summary>
    public static void CountAuthority() => Authority.Add(1);

    /// <summary>Ends the timers that refill the buckets.</summary>
    public void Dispose() => _left.Dispose();
}
