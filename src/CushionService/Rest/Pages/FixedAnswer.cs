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
    public FixedAnswer(byte[] bytes, string mediaType, string caching = "no-cache")
    {
        (_plain, _mediaType, _caching) = (bytes, mediaType, caching);
        _digest = Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 16));
        _brotli = new(() => CompressedAsync(to => new BrotliStream(to, CompressionLevel.SmallestSize)));
        _gzip = new(() => CompressedAsync(to => new GZipStream(to, CompressionLevel.SmallestSize)));
    }

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

        byte[] body = encoding switch
        {
            "br" => await _brotli.Value,
            "gzip" => await _gzip.Value,
            _ => _plain,
        };
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

    // Null for none. Of equals, the smaller. A small answer is not worth it.
    private string? EncodingFor(StringValues accepted)
    {
        const int Small = 256;
        if (_plain.Length < Small || !StringWithQualityHeaderValue.TryParseList(accepted, out IList<StringWithQualityHeaderValue>? list))
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
