using System.IO.Compression;
using CushionService.Rejections;
using Microsoft.AspNetCore.RequestDecompression;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest;

/// <summary>Compressed bodies, both ways (RFC 9110, section 8.4): by the framework's middleware, with the limits of
/// bodies counted after decompression.</summary>
internal static class Encodings
{
    // What is neither JSON nor text is compressed already, or small.
    private static readonly string[] Compressible =
    [
        .. ResponseCompressionDefaults.MimeTypes,
        "application/problem+json",
        "application/schema+json",
        "image/svg+xml",
        "image/vnd.dxf",
        .. QuoteStreamEndpoint.MediaTypes,
    ];

    /// <summary>Adds both.</summary>
    /// <remarks>Compression over TLS lets who can make a caller send text of theirs, and see the length of the answer,
    /// guess at the rest of it (the BREACH attack). Answers hold nothing but what the same caller has sent, and no
    /// secret.</remarks>
    public static void AddEncodings(this IServiceCollection services)
    {
        services.AddRequestDecompression();
        services.AddResponseCompression(options =>
        {
            options.EnableForHttps = true;
            options.MimeTypes = Compressible;
        });
        // Each answer is compressed once, for one caller: the fastest level costs less than the bytes that it saves.
        services.Configure<BrotliCompressionProviderOptions>(options => options.Level = CompressionLevel.Fastest);
        services.Configure<GzipCompressionProviderOptions>(options => options.Level = CompressionLevel.Fastest);
    }

    /// <summary>Decompresses bodies. One in an encoding that is not known here is a 415, with those that are
    /// (RFC 9110, section 15.5.16).</summary>
    public static void UseRequestEncodings(this IApplicationBuilder app)
    {
        ICollection<string> known = app
            .ApplicationServices.GetRequiredService<IOptions<RequestDecompressionOptions>>()
            .Value.DecompressionProviders.Keys;
        app.Use(
            (http, next) =>
            {
                string encoding = http.Request.Headers.ContentEncoding.ToString();
                if (encoding.Length == 0 || encoding.Equals("identity", StringComparison.OrdinalIgnoreCase) || known.Contains(encoding))
                {
                    return next(http);
                }

                http.Response.Headers[HeaderNames.AcceptEncoding] = string.Join(", ", known);
                return Problems.WriteAsync(http, StatusCodes.Status415UnsupportedMediaType, FormTexts.Encodings(known));
            }
        );
        app.UseRequestDecompression();
    }
}
