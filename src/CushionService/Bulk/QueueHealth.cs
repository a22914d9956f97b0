using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CushionService.Bulk;

/// <summary>A worker is ready while it can reach the queue.</summary>
internal sealed class QueueHealth(OrderQueue queue) : IHealthCheck
{
    /// <summary>Looks at the connection; asks nothing of the server.</summary>
    /// <param name="context">Not read.</param>
    /// <param name="cancellationToken">Not read: the state of the connection is at hand.</param>
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default) =>
        Task.FromResult(queue.IsOpen ? HealthCheckResult.Healthy() : HealthCheckResult.Unhealthy("The queue of orders does not answer."));
}
