using System.IO.Compression;
using System.Security.Cryptography;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest.Pages;

/// <summary>An answer that is the same until the next release: its bytes are made and compressed once, and a caller that
/// holds them gets 304 instead.</summary>
internal sealed class FixedAnswer
{
    private static readonly string[] Encodings = ["br", "gzip"];

    private readonly string _mediaType;
    private readonly string _caching;
    private readonly string _digest;
    private readonly byte[] _plain;

    // Compressing a large answer takes a second: whoever asks meanwhile waits without a thread.
    private readonly Lazy<Task<byte[]>> _brotli;
    private readonly Lazy<Task<byte[]>> _gzip;

    /// <summary>An answer of these bytes.</summary>
    /// <param name="bytes">The body.</param>
    /// <param name="mediaType">Its media type.</param>
    /// <param name="caching">The value of <c>Cache-Control</c>, unless a call has its own.</param>
    /// <param name="level">How much time goes into making it smaller: the most for one that is sent again and again, the least for one
    /// that is made for one call.</param>
    public FixedAnswer(byte[] bytes, string mediaType, string caching = "no-cache", CompressionLevel level = CompressionLevel.SmallestSize)
    {
        (_plain, _mediaType, _caching) = (bytes, mediaType, caching);
        _digest = Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 16));
        _brotli = new(() => CompressedAsync(to => new BrotliStream(to, level)));
        _gzip = new(() => CompressedAsync(to => new GZipStream(to, level)));
    }

    /// <summary>Compresses the answer as a call wants it, so that writing it takes no more work.</summary>
    public Task PrepareAsync(HttpContext http) => BodyAsync(EncodingFor(http.Request.Headers.AcceptEncoding));

    /// <summary>Answers GET and HEAD: in the encoding that the caller prefers, or 304 where it holds the answer in
    /// one.</summary>
    public Task WriteAsync(HttpContext http) => WriteAsync(http, _caching);

    /// <summary>The same, with a value of <c>Cache-Control</c> for this call.</summary>
    public async Task WriteAsync(HttpContext http, string caching)
    {
        string? encoding = EncodingFor(http.Request.Headers.AcceptEncoding);
        IHeaderDictionary headers = http.Response.Headers;
        // A strong tag is of the bytes as they are sent, and so another for each encoding (RFC 9110, section 8.8.3.3).
        headers.ETag = $"\"{_digest}{(encoding is null ? "" : "-" + encoding)}\"";
        headers.CacheControl = caching;
        headers.AppendCommaSeparatedValues(HeaderNames.Vary, HeaderNames.AcceptEncoding);
        if (IsHeld(http.Request.Headers.IfNoneMatch))
        {
            http.Response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }

        byte[] body = await BodyAsync(encoding);
        headers.ContentEncoding = encoding;
        http.Response.ContentType = _mediaType;
        http.Response.ContentLength = body.Length;
        if (!HttpMethods.IsHead(http.Request.Method))
        {
            await http.Response.Body.WriteAsync(body, http.RequestAborted);
        }
    }

    // The bytes are the same in every encoding. If-None-Match compares weakly, and a star means any answer that there is
    // (RFC 9110, section 13.1.2).
    private bool IsHeld(StringValues ifNoneMatch) =>
        EntityTagHeaderValue.TryParseList(ifNoneMatch, out IList<EntityTagHeaderValue>? held)
        && held.Any(tag => tag.Tag == "*" || tag.Tag.AsSpan().Trim('"').StartsWith(_digest, StringComparison.Ordinal));

    private Task<byte[]> BodyAsync(string? encoding) =>
        encoding switch
        {
            "br" => _brotli.Value,
            "gzip" => _gzip.Value,
            _ => Task.FromResult(_plain),
        };

    // Null for none. Of equals, the smaller. A small answer too: what is left plain here is compressed further out, where nobody
    // knows of its tag.
    private static string? EncodingFor(StringValues accepted)
    {
        if (!StringWithQualityHeaderValue.TryParseList(accepted, out IList<StringWithQualityHeaderValue>? list))
        {
            return null;
        }

        return Encodings.Where(name => QualityOf(name) > 0).MaxBy(QualityOf);

        double QualityOf(string name) =>
            (
                list.FirstOrDefault(one => one.Value.Equals(name, StringComparison.OrdinalIgnoreCase))
                ?? list.FirstOrDefault(one => one.Value == "*")
            )
                is { } found
                ? found.Quality ?? 1
                : 0;
    }

    private Task<byte[]> CompressedAsync(Func<Stream, Stream> compress) =>
        Task.Run(() =>
        {
            using MemoryStream to = new();
            using (Stream compressing = compress(to))
            {
                compressing.Write(_plain);
            }

            return to.ToArray();
        });
}
