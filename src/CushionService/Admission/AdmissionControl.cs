using System.Threading.RateLimiting;
using CushionService.Access;
using CushionService.Rejections;

namespace CushionService.Admission;

/// <summary>Rejects calls before their bodies are read: those of a caller that calls too often, and all that would wait
/// too long, so that the calls that are admitted are answered as fast as ever.</summary>
/// <param name="next">The rest of the pipeline.</param>
/// <param name="limits">The rates and streams of callers.</param>
/// <param name="pool">The workers, and the queue in front of them.</param>
/// <param name="retry">When a rejected caller may try again.</param>
internal sealed class AdmissionControl(RequestDelegate next, RateLimits limits, WorkerPool pool, RetryDelay retry)
{
    /// <summary>Passes a call on, or rejects it: with 429 at the caller's rate or its number of streams, with 503 when
    /// the queue is full. What needs no scope, such as health and the pages, has no limits. A stream is admitted to a
    /// full queue: its orders wait.</summary>
    public async Task InvokeAsync(HttpContext http)
    {
        if (http.GetEndpoint()?.Metadata.GetMetadata<RequiresScopeAttribute>() is not { } needs)
        {
            await next(http);
            return;
        }

        Caller caller = Caller.Of(http);
        Grant grant = caller.Grant;
        if (!limits.Take(caller, http.Response))
        {
            string why = $"This caller may make {grant.Rate} calls a second, and {grant.Burst} at once.";
            await RejectionWriter.TooManyCallsAsync(http, why, retry.NextSeconds());
        }
        else if (needs.Scope == Scopes.Batch)
        {
            using RateLimitLease stream = limits.OpenStream(caller);
            await (
                stream.IsAcquired
                    ? next(http)
                    : RejectionWriter.TooManyCallsAsync(http, $"This caller may have {grant.Streams} streams open.", retry.NextSeconds())
            );
        }
        else if (pool.IsFull)
        {
            await RejectionWriter.BusyAsync(http, retry.NextSeconds());
        }
        else
        {
            await next(http);
        }
    }
}
