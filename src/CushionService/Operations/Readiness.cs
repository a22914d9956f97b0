using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Rest.OpenApi;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CushionService.Operations;

/// <summary>Ready once the desk has answered an order, and until the service is told to end.</summary>
internal sealed class Readiness(OrderDesk desk, Draining draining) : IHealthCheck
{
    private static readonly Task<HealthCheckResult> Ready = Task.FromResult(HealthCheckResult.Healthy());

    private volatile bool _answered;

    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        if (draining.Begun)
        {
            return Task.FromResult(HealthCheckResult.Unhealthy("The service is on its way out."));
        }

        if (!_answered)
        {
            Outcome<YardageAnswer> outcome = desk.Handle(new ReceivedOrder(Examples.Nook, []), Purposes.Yardage, cancellationToken);
            if (!outcome.Answered)
            {
                return Task.FromResult(HealthCheckResult.Unhealthy("The desk refuses a sound order."));
            }

            _answered = true;
        }

        return Ready;
    }
}
