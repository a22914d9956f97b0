using Grpc.Core;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rejections;

/// <summary>Tells a caller of either door that its call is not let in, and why.</summary>
internal static class RejectionWriter
{
    /// <summary>The caller says not, or not rightly, who it is.</summary>
    public static Task UnknownAsync(HttpContext http, string why)
    {
        http.Response.Headers.WWWAuthenticate = "Bearer";
        return WriteAsync(http, StatusCodes.Status401Unauthorized, StatusCode.Unauthenticated, why);
    }

    /// <summary>The caller may not do this.</summary>
    public static Task ForbiddenAsync(HttpContext http, string why) =>
        WriteAsync(http, StatusCodes.Status403Forbidden, StatusCode.PermissionDenied, why);

    /// <summary>The caller calls too often.</summary>
    public static Task TooOftenAsync(HttpContext http, string why)
    {
        http.Response.Headers[HeaderNames.RetryAfter] = "1";
        return WriteAsync(http, StatusCodes.Status429TooManyRequests, StatusCode.ResourceExhausted, why);
    }

    /// <summary>There is more to do than can be done.</summary>
    public static Task BusyAsync(HttpContext http, int seconds)
    {
        http.Response.Headers.RetryAfter = seconds.ToString();
        return WriteAsync(
            http,
            StatusCodes.Status503ServiceUnavailable,
            StatusCode.Unavailable,
            "The service has more to do than it can; call again later."
        );
    }

    private static Task WriteAsync(HttpContext http, int status, StatusCode grpc, string why) =>
        TrailersOnly.Answers(http.Request) ? TrailersOnly.WriteAsync(http, grpc, why) : Problems.WriteAsync(http, status, why);
}
