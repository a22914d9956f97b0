using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CushionService.Admission;

/// <summary>Degraded while the limits of callers are not shared; the service stays ready.</summary>
internal sealed class SharedBucketHealth(SharedBuckets buckets) : IHealthCheck
{
    /// <summary>Says what the last call found.</summary>
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default) =>
        Task.FromResult(
            buckets.IsAway
                ? HealthCheckResult.Degraded("Redis does not answer; limits are those of this instance.")
                : HealthCheckResult.Healthy()
        );
}
