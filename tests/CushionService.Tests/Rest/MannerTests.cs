using System.Net;
using CushionService.Tests.Access;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Rest;

/// <summary>What HTTP expects of every answer: HEAD beside GET, tags, names of one media type, a trace.</summary>
public sealed class MannerTests(RunningService service) : IClassFixture<RunningService>
{
    public static TheoryData<string> Paths =>
        [
            "/",
            "/site/site.css",
            "/demo/pillow.json",
            "/widget",
            "/guide/",
            "/guide/orders.md",
            "/guide/reading-nook.svg",
            "/openapi/v1.json",
            "/docs/index.html",
            "/v1/catalogue",
            "/v1/estimate?units=in&construction=boxed&outline=rectangle&width=44&depth=18&thickness=3&fabricWidth=54",
            "/health/live",
            "/health/ready",
            "/metrics",
        ];

    [Fact]
    public async Task The_integrity_of_the_widget_is_written_as_a_page_takes_it() =>
        Assert.Contains(
            $"\"integrity\":\"{Widget.WidgetModule.Current.Integrity}\"",
            await service.Http.GetStringAsync(new Uri("/widget", UriKind.Relative)),
            StringComparison.Ordinal
        );

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Head_answers_wherever_get_does(string path)
    {
        using HttpResponseMessage get = await service.Http.GetAsync(new Uri(path, UriKind.Relative));
        using HttpRequestMessage asking = new(HttpMethod.Head, path);
        using HttpResponseMessage head = await service.Http.SendAsync(asking);

        Assert.Equal(HttpStatusCode.OK, get.StatusCode);
        Assert.Equal(HttpStatusCode.OK, head.StatusCode);
        Assert.Equal(get.Content.Headers.ContentType?.MediaType, head.Content.Headers.ContentType?.MediaType);
        // The server sends no body of theirs; in memory it is still there.
        if (!path.StartsWith("/health", StringComparison.Ordinal) && path != "/metrics")
        {
            Assert.Empty(await head.Content.ReadAsByteArrayAsync());
        }
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task A_caller_that_holds_an_answer_is_told_so(string path)
    {
        // What is of the moment has no tag.
        if (path.StartsWith("/health", StringComparison.Ordinal) || path == "/metrics")
        {
            return;
        }

        using HttpResponseMessage first = await service.Http.GetAsync(new Uri(path, UriKind.Relative));
        using HttpRequestMessage again = new(HttpMethod.Get, path);
        again.Headers.IfNoneMatch.Add(first.Headers.ETag!);
        using HttpResponseMessage second = await service.Http.SendAsync(again);

        Assert.Equal(HttpStatusCode.NotModified, second.StatusCode);
        Assert.Equal(first.Headers.ETag, second.Headers.ETag);
        Assert.Empty(await second.Content.ReadAsByteArrayAsync());
    }

    [Theory]
    [InlineData("application/x-ndjson")]
    [InlineData("application/jsonl")]
    [InlineData("application/x-jsonlines")]
    public async Task A_stream_has_the_name_that_its_caller_accepts(string type)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, "/v1/quotes/stream")
        {
            Content = new StringContent(Callers.Pillow.ReplaceLineEndings(""), System.Text.Encoding.UTF8, type),
        };
        request.Headers.Accept.ParseAdd(type);
        using HttpResponseMessage response = await service.Http.SendAsync(request);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal(type, response.Content.Headers.ContentType!.MediaType);
    }

    [Theory]
    [InlineData("/v1/catalogue", HttpStatusCode.OK)]
    [InlineData("/v1/nothing", HttpStatusCode.NotFound)]
    [InlineData("/v1/yardage", HttpStatusCode.MethodNotAllowed)]
    [InlineData("/health/live", HttpStatusCode.OK)]
    [InlineData("/docs/index.html", HttpStatusCode.OK)]
    public async Task Every_answer_names_the_trace_that_the_caller_began(string path, HttpStatusCode expected)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, path);
        request.Headers.Add("traceparent", "00-0af7651916cd43dd8448eb211c80319c-b7ad6b7169203331-01");
        using HttpResponseMessage response = await service.Http.SendAsync(request);

        Assert.Equal(expected, response.StatusCode);
        string trace = response.Headers.GetValues("traceresponse").Single();
        Assert.Matches("^00-0af7651916cd43dd8448eb211c80319c-[0-9a-f]{16}-0[01]\\z", trace);
        if (!response.IsSuccessStatusCode)
        {
            Assert.Equal(trace, (await response.ProblemAsync())["traceId"]!.GetValue<string>());
        }
    }
}
