using System.Threading.RateLimiting;
using CushionService.Access;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>Turns calls away before their bodies are read: those of a caller that calls too often, and all that would wait too long, so that those let in
/// are answered as fast as ever.</summary>
internal sealed class AdmissionControl(RequestDelegate next, RateLimits limits, Workbench bench, IOptions<AdmissionOptions> options)
{
    public Task InvokeAsync(HttpContext http)
    {
        if (http.GetEndpoint()?.Metadata.GetMetadata<NeedsAttribute>() is not { } needs)
        {
            return next(http);
        }

        Caller caller = Caller.Of(http);
        return !limits.Take(caller, http.Response)
                ? TurnAway.TooOftenAsync(
                    http,
                    $"This caller may make {caller.Grant.Rate} calls a second, and {caller.Grant.Burst} at once."
                )
            : needs.Scope == Scopes.Batch ? StreamAsync(http, caller)
            : bench.IsFull ? TurnAway.BusyAsync(http, options.Value.RetryAfterSeconds)
            : next(http);
    }

    private async Task StreamAsync(HttpContext http, Caller caller)
    {
        using RateLimitLease stream = limits.OpenStream(caller);
        await (stream.IsAcquired ? next(http) : TurnAway.TooOftenAsync(http, $"This caller may have {caller.Grant.Streams} streams open."));
    }
}
