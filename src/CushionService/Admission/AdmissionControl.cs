using System.Threading.RateLimiting;
using CushionService.Access;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>Turns calls away before their bodies are read: those of a caller that calls too often, and all that would wait too long, so that those let in
/// are answered as fast as ever.</summary>
internal sealed class AdmissionControl(RequestDelegate next, RateLimits limits, Workbench bench, IOptions<AdmissionOptions> options)
{
    public async Task InvokeAsync(HttpContext http)
    {
        if (http.GetEndpoint()?.Metadata.GetMetadata<NeedsAttribute>() is not { } needs)
        {
            await next(http);
            return;
        }

        Caller caller = Caller.Of(http);
        if (!limits.Take(caller, http.Response))
        {
            await TurnAway.TooOftenAsync(http, $"This caller may make {caller.Grant.Rate} calls a second, and {caller.Grant.Burst} at once.");
        }
        else if (needs.Scope == Scopes.Batch)
        {
            using RateLimitLease stream = limits.OpenStream(caller);
            await (stream.IsAcquired ? next(http) : TurnAway.TooOftenAsync(http, $"This caller may have {caller.Grant.Streams} streams open."));
        }
        else if (bench.IsFull)
        {
            await TurnAway.BusyAsync(http, options.Value.RetryAfterSeconds);
        }
        else
        {
            await next(http);
        }
    }
}
