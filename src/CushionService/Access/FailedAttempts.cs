using System.Diagnostics.Metrics;
using System.Threading.RateLimiting;
using CushionService.Metrics;

namespace CushionService.Access;

/// <summary>How often an address may come with a key or a token that is not valid: one a second, and twenty at once; what comes beyond is
/// rejected as too much. Tokens that are not valid are looked at fifty times as often: a key cannot be guessed, and this keeps the
/// verifying of made-up tokens cheap.</summary>
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

    private readonly PartitionedRateLimiter<string> _reported = Bucket(1, 20);

    private readonly PartitionedRateLimiter<string> _verified = Bucket(50, 200);

    /// <summary>Whether a token from an address is looked at: not while it sends wrong ones by the hundred.</summary>
    /// <param name="address">As <see cref="CallerAddress"/> has it.</param>
    public bool MayVerify(string address) => _verified.GetStatistics(address) is not { CurrentAvailablePermits: 0 };

    /// <summary>Counts a failure.</summary>
    /// <param name="address">As <see cref="CallerAddress"/> has it.</param>
    /// <param name="isToken">Whether it was a token, which had to be verified.</param>
    /// <returns>Whether the address may hear what was wrong; it has failed too often of late otherwise.</returns>
    public bool Count(string address, bool isToken)
    {
        Calls.Add(1);
        if (isToken)
        {
            _verified.AttemptAcquire(address).Dispose();
        }

        using RateLimitLease lease = _reported.AttemptAcquire(address);
        return lease.IsAcquired;
    }

    /// <summary>Counts that the authority of tokens did not answer.</summary>
    public static void CountAuthority() => Authority.Add(1);

    /// <summary>Ends the timers that refill the buckets.</summary>
    public void Dispose()
    {
        _reported.Dispose();
        _verified.Dispose();
    }

    private static PartitionedRateLimiter<string> Bucket(int rate, int burst) =>
        PartitionedRateLimiter.Create<string, string>(address =>
            RateLimitPartition.GetTokenBucketLimiter(
                address,
                _ => new TokenBucketRateLimiterOptions
                {
                    TokenLimit = burst,
                    TokensPerPeriod = rate,
                    ReplenishmentPeriod = TimeSpan.FromSeconds(1),
                }
            )
        );
}
