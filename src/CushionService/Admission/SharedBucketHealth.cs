using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CushionService.Admission;

/// <summary>Degraded while the limits of callers are not shared; the service stays ready.</summary>
internal sealed class SharedBucketHealth(SharedBuckets buckets) : IHealthCheck
{
    /// <summary>Says what the last call found.</summary>
    /// <param name="context">Not read.</param>
    /// <param name="cancellationToken">Not read: nothing is asked of Redis here.</param>
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default) =>
        Task.FromResult(
            buckets.IsAway
                ? HealthCheckResult.Degraded("Redis does not answer; limits are those of this instance.")
                : HealthCheckResult.Healthy()
        );
}
