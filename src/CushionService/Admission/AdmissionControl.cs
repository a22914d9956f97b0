using System.Threading.RateLimiting;
using CushionService.Access;
using CushionService.Rejections;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>Rejects calls before their bodies are read: those of a caller that calls too often or has had more work done
/// than its grant covers, and all that would wait too long, so that the calls that are admitted are answered as fast as
/// ever.</summary>
/// <param name="next">The rest of the pipeline.</param>
/// <param name="limits">The rates and streams of callers.</param>
/// <param name="work">The work of callers.</param>
/// <param name="turns">The workers, and who waits for them.</param>
/// <param name="retry">When a rejected caller may try again.</param>
/// <param name="options">The limits of what needs no scope.</param>
internal sealed class AdmissionControl(
    RequestDelegate next,
    RateLimits limits,
    WorkLimits work,
    Turns turns,
    RetryDelay retry,
    IOptions<AdmissionOptions> options
)
{
    /// <summary>Passes a call on, or rejects it: with 429 at the caller's rate, its work or its number of streams, with
    /// 503 when it would wait too long. What needs no scope, such as the pages and the document, has a limit by address;
    /// health and metrics have none. A stream is admitted to a full queue: its orders wait.</summary>
    /// <param name="http">The call; its caller has been found by the middleware of access.</param>
    /// <remarks>None of the checks reads the body.</remarks>
    public async Task InvokeAsync(HttpContext http)
    {
        EndpointMetadataCollection? metadata = http.GetEndpoint()?.Metadata;
        if (metadata?.GetMetadata<RequiresScopeAttribute>() is not { } needs)
        {
            await PageAsync(http, metadata);
            return;
        }

        Caller caller = Caller.Of(http);
        Grant grant = caller.Grant;
        // An answer that caches keep must not say what is left to the one who asked first.
        bool isPublic = !caller.IsKnown && metadata.GetMetadata<PublicAnswerAttribute>() is not null;
        if (!await limits.TakeAsync(caller, http.Response, isPublic))
        {
            await RejectionWriter.TooManyCallsAsync(http, LimitTexts.Rate(grant.Rate, grant.Burst), retry.NextSeconds());
        }
        else if (!work.MayBegin(caller, out int seconds))
        {
            LimitHeaders.NoSteps(http.Response, grant, seconds);
            await RejectionWriter.TooManyCallsAsync(http, LimitTexts.Steps(grant.Steps, seconds), retry.NextSeconds(seconds));
        }
        else if (needs.Scope == Scopes.Batch)
        {
            using RateLimitLease stream = limits.OpenStream(caller);
            if (stream.IsAcquired)
            {
                await next(http);
                return;
            }

            LimitHeaders.NoStreams(http.Response, grant);
            await RejectionWriter.TooManyCallsAsync(http, LimitTexts.Streams(grant.Streams), retry.NextSeconds());
        }
        else if (turns.IsFull(caller))
        {
            await RejectionWriter.BusyAsync(http, retry.NextSeconds());
        }
        else
        {
            await next(http);
        }
    }

    private async Task PageAsync(HttpContext http, EndpointMetadataCollection? metadata)
    {
        if (metadata?.GetMetadata<DisableRateLimitingAttribute>() is not null || limits.TakePage(CallerAddress.Of(http)))
        {
            await next(http);
            return;
        }

        LimitHeaders.NoPages(http.Response, options.Value);
        await RejectionWriter.TooManyCallsAsync(http, LimitTexts.AddressRate, retry.NextSeconds());
    }
}
