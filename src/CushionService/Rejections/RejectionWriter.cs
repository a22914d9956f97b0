using System.Globalization;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Languages;
using Grpc.Core;

namespace CushionService.Rejections;

/// <summary>Rejects calls before they reach REST or gRPC, in the form that the caller expects: a problem (RFC 9457), or
/// a status of gRPC.</summary>
internal static class RejectionWriter
{
    private const string Challenge = "Bearer realm=\"cushionservice\"";

    /// <summary>401: the caller is not known, or must say who it is.</summary>
    /// <param name="http">The call.</param>
    /// <param name="why">What is wrong, for people. In English its text is of ASCII, as the header has it (RFC 6750, section 3).</param>
    /// <param name="error">What is wrong with the key or the token that came, in a word of RFC 6750, section 3.1; null when
    /// none came.</param>
    public static Task UnknownCallerAsync(HttpContext http, Message why, string? error = null)
    {
        http.Response.Headers.WWWAuthenticate = error is null
            ? Challenge
            : $"{Challenge}, error=\"{error}\", error_description=\"{English(why)}\"";
        return WriteAsync(http, StatusCodes.Status401Unauthorized, StatusCode.Unauthenticated, why);
    }

    /// <summary>403: the caller is known, and may not do this.</summary>
    /// <param name="http">The call.</param>
    /// <param name="why">The missing scope, for people; in English of ASCII.</param>
    /// <param name="scope">The missing scope.</param>
    public static Task ForbiddenAsync(HttpContext http, Message why, string scope)
    {
        http.Response.Headers.WWWAuthenticate =
            $"{Challenge}, error=\"insufficient_scope\", error_description=\"{English(why)}\", scope=\"{scope}\"";
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
            ProblemTexts.AuthorityAway,
            "authority-away"
        );
    }

    /// <summary>429: the caller calls too often, or has too many streams open.</summary>
    /// <param name="http">The call.</param>
    /// <param name="why">The limit, for people.</param>
    /// <param name="retryAfter">Seconds until the caller may try again.</param>
    public static Task TooManyCallsAsync(HttpContext http, Message why, int retryAfter)
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
        return WriteAsync(http, StatusCodes.Status503ServiceUnavailable, StatusCode.Unavailable, ProblemTexts.Busy, "busy");
    }

    private static void MayRetryAfter(HttpContext http, int seconds) =>
        http.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);

    private static string English(Message why) => new MessageWriter(Language.English, LengthUnit.Inch).Text(why);

    private static Task WriteAsync(HttpContext http, int status, StatusCode grpc, Message why, string? code = null) =>
        TrailersOnly.Answers(http)
            ? TrailersOnly.WriteAsync(http, grpc, new MessageWriter(ReaderLanguage.Of(http), LengthUnit.Inch).Text(why))
            : Problems.WriteAsync(http, status, why, code);
}
