using Microsoft.Net.Http.Headers;

namespace CushionService.Access;

/// <summary>The pages of other sites that may call from a browser: those on the list <c>Access:Origins</c>, and no
/// others (Fetch standard, CORS); and those of the publishable keys.</summary>
internal static class Origins
{
    /// <summary>Adds the policy. Without a list, no page of another site may call.</summary>
    public static void AddOrigins(this WebApplicationBuilder builder)
    {
        string[] allowed = builder.Configuration.GetSection("Access:Origins").Get<string[]>() ?? [];
        if (allowed.FirstOrDefault(origin => !IsOrigin(origin)) is { } wrong)
        {
            throw new InvalidOperationException($"Access:Origins: {wrong} is no origin, such as https://shop.example.");
        }

        // Read at the start: a new shop's origin takes effect with the next one.
        string[] published =
        [
            .. (builder.Configuration.GetSection("Access:Publishable").Get<PageKeyOptions[]>() ?? []).SelectMany(key => key.Origins),
        ];
        builder.Services.AddCors(cors =>
            cors.AddDefaultPolicy(policy =>
                policy
                    .SetIsOriginAllowed(origin =>
                        allowed.Contains(origin, StringComparer.OrdinalIgnoreCase)
                        || published.Contains(origin, StringComparer.OrdinalIgnoreCase)
                    )
                    .WithMethods(HttpMethods.Get, HttpMethods.Head, HttpMethods.Post)
                    .WithHeaders(
                        HeaderNames.Accept,
                        HeaderNames.AcceptLanguage,
                        HeaderNames.Authorization,
                        HeaderNames.ContentType,
                        HeaderNames.IfNoneMatch,
                        KeyHandler.Header,
                        // A page that traces its calls, and the clients of gRPC-Web.
                        HeaderNames.TraceParent,
                        HeaderNames.TraceState,
                        HeaderNames.Baggage,
                        HeaderNames.ContentEncoding,
                        "X-Grpc-Web",
                        "X-User-Agent",
                        "grpc-timeout",
                        "grpc-accept-encoding"
                    )
                    .WithExposedHeaders(
                        HeaderNames.ETag,
                        HeaderNames.RetryAfter,
                        "RateLimit",
                        "RateLimit-Policy",
                        "traceresponse",
                        "Deprecation",
                        "Sunset",
                        HeaderNames.Link,
                        HeaderNames.WWWAuthenticate,
                        HeaderNames.GrpcStatus,
                        HeaderNames.GrpcMessage,
                        HeaderNames.GrpcEncoding,
                        "grpc-status-details-bin"
                    )
                    // A browser asks once an hour and page, and not before every call.
                    .SetPreflightMaxAge(TimeSpan.FromHours(1))
            )
        );
    }

    /// <summary>Whether a text is a scheme and a host, without a path (RFC 6454, section 6.2).</summary>
    public static bool IsOrigin(string origin) =>
        Uri.TryCreate(origin, UriKind.Absolute, out Uri? address)
        && (address.Scheme == Uri.UriSchemeHttps || address.Scheme == Uri.UriSchemeHttp)
        && address.GetLeftPart(UriPartial.Authority).Equals(origin, StringComparison.OrdinalIgnoreCase);
}
