using System.Threading.RateLimiting;
using CushionService.Access;
using CushionService.Rejections;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>Turns calls away before their bodies are read: those of a caller that calls too often, and all that would wait too long, so
/// that those let in are answered as fast as ever.</summary>
internal sealed class AdmissionControl(RequestDelegate next, RateLimits limits, WorkerPool pool, IOptions<AdmissionOptions> options)
{
    public Task InvokeAsync(HttpContext http)
    {
        if (http.GetEndpoint()?.Metadata.GetMetadata<RequiresScopeAttribute>() is not { } needs)
        {
            return next(http);
        }

        Caller caller = Caller.Of(http);
        return !limits.Take(caller, http.Response)
                ? RejectionWriter.TooOftenAsync(
                    http,
                    $"This caller may make {caller.Grant.Rate} calls a second, and {caller.Grant.Burst} at once."
                )
            : needs.Scope == Scopes.Batch ? StreamAsync(http, caller)
            : pool.IsFull ? RejectionWriter.BusyAsync(http, options.Value.RetryAfterSeconds)
            : next(http);
    }

    private async Task StreamAsync(HttpContext http, Caller caller)
    {
        using RateLimitLease stream = limits.OpenStream(caller);
        await (
            stream.IsAcquired
                ? next(http)
                : RejectionWriter.TooOftenAsync(http, $"This caller may have {caller.Grant.Streams} streams open.")
        );
    }
}
