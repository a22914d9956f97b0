using System.Globalization;
using Grpc.Core;

namespace CushionService.Rejections;

/// <summary>Rejects calls before they reach REST or gRPC, in the form that the caller expects: a problem (RFC 9457), or
/// a status of gRPC.</summary>
internal static class RejectionWriter
{
    private const string Challenge = "Bearer realm=\"cushionservice\"";

    /// <summary>401: the caller is not known, or must say who it is.</summary>
    /// <param name="http">The call.</param>
    /// <param name="why">A sentence for people, in ASCII.</param>
    /// <param name="error">What is wrong with the key or the token that came, in a word of RFC 6750, section 3.1; null when
    /// none came.</param>
    public static Task UnknownCallerAsync(HttpContext http, string why, string? error = null)
    {
        http.Response.Headers.WWWAuthenticate = error is null ? Challenge : $"{Challenge}, error=\"{error}\", error_description=\"{why}\"";
        return WriteAsync(http, StatusCodes.Status401Unauthorized, StatusCode.Unauthenticated, why);
    }

    /// <summary>403: the caller is known, and may not do this.</summary>
    /// <param name="http">The call.</param>
    /// <param name="why">The missing scope, as a sentence in ASCII.</param>
    /// <param name="scope">The missing scope.</param>
    public static Task ForbiddenAsync(HttpContext http, string why, string scope)
    {
        http.Response.Headers.WWWAuthenticate =
            $"{Challenge}, error=\"insufficient_scope\", error_description=\"{why}\", scope=\"{scope}\"";
        return WriteAsync(http, StatusCodes.Status403Forbidden, StatusCode.PermissionDenied, why);
    }

    /// <summary>503: whether the token is right cannot be known now.</summary>
    /// <param name="http">The call.</param>
    /// <param name="retryAfter">Seconds until the caller may try again.</param>
    public static Task AuthorityAwayAsync(HttpContext http, int retryAfter)
    {
        MayRetryAfter(http, retryAfter);
        return WriteAsync(
            http,
            StatusCodes.Status503ServiceUnavailable,
            StatusCode.Unavailable,
            "The authority of tokens does not answer; call again later.",
            "authority-away"
        );
    }

    /// <summary>429: the caller calls too often, or has too many streams open.</summary>
    /// <param name="http">The call.</param>
    /// <param name="why">The limit, as a sentence in ASCII.</param>
    /// <param name="retryAfter">Seconds until the caller may try again.</param>
    public static Task TooManyCallsAsync(HttpContext http, string why, int retryAfter)
    {
        MayRetryAfter(http, retryAfter);
        return WriteAsync(http, StatusCodes.Status429TooManyRequests, StatusCode.ResourceExhausted, why);
    }

    /// <summary>503: the queue for the workers is full.</summary>
    /// <param name="http">The call.</param>
    /// <param name="retryAfter">Seconds until the caller may try again.</param>
    public static Task BusyAsync(HttpContext http, int retryAfter)
    {
        MayRetryAfter(http, retryAfter);
        return WriteAsync(
            http,
            StatusCodes.Status503ServiceUnavailable,
            StatusCode.Unavailable,
            "The service has more to do than it can; call again later.",
            "busy"
        );
    }

    private static void MayRetryAfter(HttpContext http, int seconds) =>
        http.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);

    private static Task WriteAsync(HttpContext http, int status, StatusCode grpc, string why, string? code = null) =>
        TrailersOnly.Answers(http.Request) ? TrailersOnly.WriteAsync(http, grpc, why) : Problems.WriteAsync(http, status, why, code);
}
