using Microsoft.AspNetCore.Http.Features;

namespace CushionService.Rejections;

/// <summary>Logs what a REST call throws, without its text. Comes right behind the exception handler, which
/// answers.</summary>
internal sealed class ExceptionLogger(RequestDelegate next, ILogger<ExceptionLogger> log)
{
    /// <summary>Passes the call on. An exception goes on to the exception handler; once the answer has begun there is
    /// no other to give, and the connection is closed, so that the caller cannot take a part for the whole.</summary>
    public async Task InvokeAsync(HttpContext http)
    {
        try
        {
            await next(http);
        }
        // Who has hung up in the middle of a body reads no answer.
        catch (BadHttpRequestException) when (http.Response.HasStarted || http.RequestAborted.IsCancellationRequested)
        {
            http.Abort();
        }
        catch (Exception exception) when (!IsOfCaller(exception, http))
        {
            log.CallFailed(exception, NameOf(http), Problems.TraceOf(http));
            Tag(http, exception);
            if (!http.Response.HasStarted)
            {
                throw;
            }

            http.Abort();
        }
    }

    // A caller that closes its connection, or sends a body that cannot be read, causes no error of ours.
    private static bool IsOfCaller(Exception exception, HttpContext http) =>
        exception is BadHttpRequestException
        || (exception is OperationCanceledException or IOException && http.RequestAborted.IsCancellationRequested);

    // The route and not the path: a path may be whatever a caller makes up.
    private static string NameOf(HttpContext http) =>
        http.GetEndpoint() is RouteEndpoint endpoint ? $"{http.Request.Method} {endpoint.RoutePattern.RawText}" : "A call without a route";

    // As the exception handler does where its diagnostics are not suppressed (OpenTelemetry semantic conventions,
    // HTTP).
    private static void Tag(HttpContext http, Exception exception)
    {
        const string ErrorType = "error.type";
        http.Features.Get<IHttpMetricsTagsFeature>()?.Tags.Add(new(ErrorType, exception.GetType().FullName));
        http.Features.Get<IHttpActivityFeature>()?.Activity.SetTag(ErrorType, exception.GetType().FullName);
    }
}
