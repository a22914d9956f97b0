using CushionService.Engine.Messages;
using Microsoft.Net.Http.Headers;

namespace CushionService.Languages;

/// <summary>The language of who reads the answer to a call: by the query where the call takes it there, else by
/// <c>Accept-Language</c>, which is metadata to callers of gRPC.</summary>
internal static class ReaderLanguage
{
    private const string Problem = "problem+json";

    /// <summary>The language of a call.</summary>
    /// <param name="http">The call, once its endpoint is known.</param>
    public static Language Of(HttpContext http) =>
        http.Request.QueryString.HasValue
        && http.GetEndpoint()?.Metadata.GetMetadata<LanguageParameterAttribute>() is not null
        && LanguageTags.Named(http.Request.Query[LanguageParameterAttribute.Name]) is { } named
            ? named
            : LanguageRanges.Choose(http.Request.Headers.AcceptLanguage);

    /// <summary>Names the language of every answer that has sentences, and tells caches that it depends on the header (RFC 9110, sections
    /// 8.5 and 12.5.5).</summary>
    /// <param name="app">The pipeline; comes before whatever may begin an answer.</param>
    public static void UseReaderLanguage(this IApplicationBuilder app) =>
        app.Use(
            static (http, next) =>
            {
                // At the last moment: the answer to a failure begins without the headers set before.
                http.Response.OnStarting(Head, http);
                return next(http);
            }
        );

    private static Task Head(object call)
    {
        HttpContext http = (HttpContext)call;
        bool isGrpc = http.IsGrpcCall();
        bool isProblem = http.Response.ContentType?.EndsWith(Problem, StringComparison.Ordinal) == true;
        if (isGrpc || isProblem || http.Request.Path.StartsWithSegments("/v1"))
        {
            http.Response.Headers.ContentLanguage = LanguageTags.Of(Of(http));
            if (!isGrpc)
            {
                http.Response.Headers.AppendCommaSeparatedValues(HeaderNames.Vary, HeaderNames.AcceptLanguage);
            }
        }

        return Task.CompletedTask;
    }
}
