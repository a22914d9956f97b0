using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Rest.OpenApi;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CushionService.Operations;

/// <summary>Ready once the desk has answered an order, and until the service is ending. A balancer sends calls only to
/// an instance that is ready.</summary>
internal sealed class Readiness(OrderDesk desk, Draining draining) : IHealthCheck
{
    // Once true, it stays true: the desk has no state that could go wrong later.
    private volatile bool _answered;

    /// <summary>Has the desk answer an order once; from then on the state is known without work.</summary>
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        if (draining.Begun)
        {
            return Task.FromResult(HealthCheckResult.Unhealthy("The service is on its way out."));
        }

        if (!_answered)
        {
            ReceivedOrder order = new(Examples.Nook, []);
            Outcome<YardageAnswer> outcome = desk.Handle(order, Purposes.Yardage, cancellationToken);
            if (!outcome.Answered)
            {
                return Task.FromResult(HealthCheckResult.Unhealthy("The desk refuses a sound order."));
            }

            _answered = true;
        }

        return Task.FromResult(HealthCheckResult.Healthy());
    }
}
