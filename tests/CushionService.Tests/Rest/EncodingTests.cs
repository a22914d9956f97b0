using System.IO.Compression;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using CushionService.Tests.Access;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Rest;

/// <summary>Compressed bodies, both ways (RFC 9110, section 8.4).</summary>
public sealed class EncodingTests(RunningService service) : IClassFixture<RunningService>
{
    [Theory]
    [InlineData("/v1/catalogue", "br")]
    [InlineData("/v1/catalogue", "gzip")]
    [InlineData("/v1/catalogue", "gzip;q=0.5, br;q=0.4", "gzip")]
    [InlineData("/openapi/v1.json", "br")]
    [InlineData("/", "gzip")]
    [InlineData("/guide/", "br")]
    [InlineData("/guide/orders.md", "br")]
    public async Task What_is_fixed_comes_in_the_encoding_that_the_caller_prefers(string path, string accepted, string? encoding = null)
    {
        using HttpResponseMessage plain = await GetAsync(path, null);
        using HttpResponseMessage packed = await GetAsync(path, accepted);
        byte[] whole = await plain.Content.ReadAsByteArrayAsync(),
            small = await packed.Content.ReadAsByteArrayAsync();

        Assert.Equal(encoding ?? accepted, packed.Content.Headers.ContentEncoding.Single());
        Assert.Empty(plain.Content.Headers.ContentEncoding);
        Assert.Contains("Accept-Encoding", plain.Headers.Vary);
        Assert.Contains("Accept-Encoding", packed.Headers.Vary);
        Assert.Equal(whole, Unpacked(small, encoding ?? accepted));
        Assert.True(small.Length < whole.Length);
    }

    [Theory]
    [InlineData("/v1/estimate?units=in&construction=boxed&outline=rectangle&width=44&depth=18&thickness=3&fabricWidth=54")]
    [InlineData("/v1/catalogue?fields=engine")]
    [InlineData("/problems/busy")]
    public async Task Each_encoding_has_a_tag_of_its_own_and_every_method_the_same(string path)
    {
        string?[] encodings = [null, "gzip", "br"];
        List<string> tags = [];
        foreach (string? encoding in encodings)
        {
            using HttpResponseMessage whole = await GetAsync(path, encoding);
            string tag = whole.Headers.ETag!.ToString();
            tags.Add(tag);
            foreach (HttpMethod method in (HttpMethod[])[HttpMethod.Head, HttpMethod.Get])
            {
                using HttpRequestMessage request = new(method, path);
                request.Headers.TryAddWithoutValidation("Accept-Encoding", encoding);
                request.Headers.TryAddWithoutValidation("If-None-Match", method == HttpMethod.Get ? tag : null);
                using HttpResponseMessage again = await service.Http.SendAsync(request);
                Assert.Equal(method == HttpMethod.Get ? HttpStatusCode.NotModified : HttpStatusCode.OK, again.StatusCode);
                Assert.Equal(tag, again.Headers.ETag!.ToString());
            }
        }

        Assert.Equal(3, tags.Distinct().Count());
    }

    [Theory]
    [InlineData("br")]
    [InlineData("gzip")]
    public async Task An_answer_is_compressed(string encoding)
    {
        using HttpResponseMessage plain = await service.PostAsync("quotes", Callers.Pillow);
        using HttpRequestMessage request = new(HttpMethod.Post, "/v1/quotes")
        {
            Content = new StringContent(Callers.Pillow, Encoding.UTF8, "application/json"),
        };
        request.Headers.AcceptEncoding.ParseAdd(encoding);
        using HttpResponseMessage packed = await service.Http.SendAsync(request);
        byte[] small = await packed.Content.ReadAsByteArrayAsync(),
            whole = await plain.Content.ReadAsByteArrayAsync();

        Assert.Equal(encoding, packed.Content.Headers.ContentEncoding.Single());
        Assert.Equal(whole, Unpacked(small, encoding));
        Assert.InRange(small.Length, 1, whole.Length / 2);
    }

    [Theory]
    [InlineData("br")]
    [InlineData("gzip")]
    [InlineData("deflate")]
    public async Task A_compressed_order_is_read(string encoding)
    {
        using HttpResponseMessage response = await SendAsync("yardage", Packed(Encoding.UTF8.GetBytes(Callers.Pillow), encoding), encoding);
        using HttpResponseMessage stream = await SendAsync(
            "quotes/stream",
            Packed(Encoding.UTF8.GetBytes(Callers.Pillow.ReplaceLineEndings("") + "\n"), encoding),
            encoding,
            "application/jsonl"
        );

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.StartsWith("{\"reference\"", await stream.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("zip", HttpStatusCode.UnsupportedMediaType)]
    [InlineData("gzip, gzip", HttpStatusCode.UnsupportedMediaType)]
    [InlineData("gzip", HttpStatusCode.BadRequest)]
    [InlineData("br", HttpStatusCode.BadRequest)]
    [InlineData("deflate", HttpStatusCode.BadRequest)]
    public async Task A_body_that_does_not_decompress_is_the_callers_fault(string encoding, HttpStatusCode expected)
    {
        using HttpResponseMessage response = await SendAsync("yardage", Encoding.UTF8.GetBytes(Callers.Pillow), encoding);

        Assert.Equal(expected, response.StatusCode);
        await response.ProblemAsync();
        Assert.Equal(expected == HttpStatusCode.UnsupportedMediaType, response.Headers.Contains("Accept-Encoding"));
    }

    [Theory]
    [InlineData("br")]
    [InlineData("gzip")]
    public async Task A_bomb_is_read_no_further_than_the_limit(string encoding)
    {
        byte[] bomb = Packed(new byte[200 << 20], encoding);
        long before = GC.GetTotalAllocatedBytes();
        using HttpResponseMessage response = await SendAsync("yardage", bomb, encoding);
        long taken = GC.GetTotalAllocatedBytes() - before;

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, response.StatusCode);
        Assert.InRange(taken, 0, 64 << 20);
    }

    [Theory]
    [InlineData("br")]
    [InlineData("gzip")]
    public async Task A_stream_that_does_not_decompress_ends_with_a_line_that_says_so(string encoding)
    {
        using HttpResponseMessage response = await SendAsync(
            "quotes/stream",
            Encoding.UTF8.GetBytes(Callers.Pillow),
            encoding,
            "application/jsonl"
        );
        string[] lines = (await response.Content.ReadAsStringAsync()).Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.Contains("\"status\":400", Assert.Single(lines), StringComparison.Ordinal);
        Assert.Contains("it does not decompress", lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_stream_that_only_expands_ends()
    {
        using HttpResponseMessage response = await SendAsync("quotes/stream", Packed(new byte[200 << 20], "br"), "br", "application/jsonl");
        string answer = await response.Content.ReadAsStringAsync();

        Assert.Contains("order-too-long", answer, StringComparison.Ordinal);
        Assert.Single(answer.TrimEnd().Split('\n'));
    }

    private static byte[] Packed(byte[] bytes, string encoding)
    {
        using MemoryStream to = new();
        using (
            Stream packing = encoding switch
            {
                "br" => new BrotliStream(to, CompressionLevel.Fastest),
                "gzip" => new GZipStream(to, CompressionLevel.Fastest),
                _ => new ZLibStream(to, CompressionLevel.Fastest),
            }
        )
        {
            packing.Write(bytes);
        }

        return to.ToArray();
    }

    private static byte[] Unpacked(byte[] bytes, string encoding)
    {
        using MemoryStream from = new(bytes);
        using Stream unpacking =
            encoding == "br" ? new BrotliStream(from, CompressionMode.Decompress) : new GZipStream(from, CompressionMode.Decompress);
        using MemoryStream to = new();
        unpacking.CopyTo(to);
        return to.ToArray();
    }

    private async Task<HttpResponseMessage> SendAsync(string call, byte[] body, string encoding, string type = "application/json")
    {
        using ByteArrayContent content = new(body);
        content.Headers.ContentType = MediaTypeHeaderValue.Parse(type);
        content.Headers.TryAddWithoutValidation("Content-Encoding", encoding);
        return await service.Http.PostAsync(new Uri($"/v1/{call}", UriKind.Relative), content);
    }

    private async Task<HttpResponseMessage> GetAsync(string path, string? accepted)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, path);
        if (accepted is not null)
        {
            request.Headers.AcceptEncoding.ParseAdd(accepted);
        }

        return await service.Http.SendAsync(request);
    }
}
