using Microsoft.Net.Http.Headers;

namespace CushionService.Access;

/// <summary>What every answer tells a browser (OWASP Secure Headers Project): nothing is guessed, framed or loaded from
/// elsewhere.</summary>
internal static class SecurityHeaders
{
    // Our pages have scripts and styles of their own and nothing inline; an answer that is not a page needs nothing at
    // all.
    private const string OfPages =
        "default-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'; img-src 'self' data:; object-src 'none'; "
        + "script-src 'self'; style-src 'self'";

    // The drawings and the cut sheet have their styles inline, and pictures of their own.
    private const string OfCalls =
        "default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; img-src data:; style-src 'unsafe-inline'";

    // The page to try the calls writes its styles, and one script, into itself.
    private const string OfDocs =
        "default-src 'self'; base-uri 'none'; frame-ancestors 'none'; img-src 'self' data:; object-src 'none'; "
        + "script-src 'self' 'unsafe-inline'; style-src 'self' 'unsafe-inline'";

    /// <summary>Writes the headers of every answer.</summary>
    public static void UseSecurityHeaders(this IApplicationBuilder app)
    {
        app.UseHsts();
        app.Use(
            static (http, next) =>
            {
                // At the last moment: the answer to a failure begins without the headers set before.
                http.Response.OnStarting(Write, http);
                return next(http);
            }
        );
    }

    private static Task Write(object state)
    {
        HttpContext http = (HttpContext)state;
        IHeaderDictionary headers = http.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers[HeaderNames.ContentSecurityPolicy] =
            IsForm(http) ? OfPages
            : http.Request.Path.StartsWithSegments("/v1") ? OfCalls
            : http.Request.Path.StartsWithSegments("/docs") ? OfDocs
            : OfPages;
        headers.Vary = VaryOf(headers);
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        return Task.CompletedTask;
    }

    // The estimate as a page: it has our style sheet, and a form that leads to itself.
    private static bool IsForm(HttpContext http) =>
        http.Request.Path == "/v1/estimate" && http.Response.ContentType?.StartsWith("text/html", StringComparison.Ordinal) == true;

    // A page of another site gets a header that its browser looks for: caches must not give it an answer without one. All in
    // one line and in one order, since some caches read one line alone.
    private static string VaryOf(IHeaderDictionary headers)
    {
        IEnumerable<string> names = headers.GetCommaSeparatedValues(HeaderNames.Vary);
        if (headers.AccessControlAllowOrigin != "*")
        {
            names = names.Append(HeaderNames.Origin);
        }

        return string.Join(", ", names.Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal));
    }
}
