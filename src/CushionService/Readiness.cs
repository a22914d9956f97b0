using CushionService.Contract.Answers;
using CushionService.Rest.OpenApi;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CushionService;

/// <summary>Ready when the desk answers an order.</summary>
internal sealed class Readiness(OrderDesk desk) : IHealthCheck
{
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        Outcome<YardageAnswer> outcome = desk.EstimateYardage(Examples.Nook, cancellationToken);
        return Task.FromResult(outcome.Answered ? HealthCheckResult.Healthy() : HealthCheckResult.Unhealthy("The desk refuses a sound order."));
    }
}
