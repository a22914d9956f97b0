using System.Net;
using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Rest;

/// <summary>Faults of the call itself, before any order is read (RFC 9110).</summary>
public sealed class CallTests(RunningService service) : IClassFixture<RunningService>
{
    [Theory]
    [InlineData("GET", "/nowhere", HttpStatusCode.NotFound)]
    [InlineData("GET", "/v1/nowhere", HttpStatusCode.NotFound)]
    [InlineData("POST", "/v1/", HttpStatusCode.NotFound)]
    [InlineData("GET", "/v1/quotes", HttpStatusCode.MethodNotAllowed)]
    [InlineData("DELETE", "/v1/layouts", HttpStatusCode.MethodNotAllowed)]
    [InlineData("POST", "/v1/catalogue", HttpStatusCode.MethodNotAllowed)]
    public async Task A_wrong_path_or_method_is_a_problem(string method, string path, HttpStatusCode status)
    {
        using HttpRequestMessage request = new(new HttpMethod(method), path);
        using HttpResponseMessage response = await service.Http.SendAsync(request);

        Assert.Equal(status, response.StatusCode);
        await response.ProblemAsync();
        Assert.Equal(status == HttpStatusCode.MethodNotAllowed, response.Content.Headers.Allow.Count > 0);
    }

    [Theory]
    [InlineData("/v1/quotes", HttpStatusCode.UnsupportedMediaType)]
    [InlineData("/v1/nothing", HttpStatusCode.NotFound)]
    public async Task A_gRPC_message_that_comes_to_a_REST_path_is_told_so_with_a_problem(string path, HttpStatusCode expected)
    {
        using ByteArrayContent content = new([0, 0, 0, 0, 0]);
        content.Headers.ContentType = new("application/grpc");
        using HttpResponseMessage response = await service.Http.PostAsync(path, content);

        Assert.Equal(expected, response.StatusCode);
        await response.ProblemAsync();
    }

    [Theory]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("text/plain")]
    [InlineData("application/json; charset=utf-16")]
    [InlineData("application/jsonlines")]
    public async Task An_order_that_is_not_JSON_by_its_header_is_415(string contentType)
    {
        using HttpResponseMessage response = await service.PostAsync("quotes", "{}"u8.ToArray(), contentType);

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, response.StatusCode);
        await response.ProblemAsync();
    }

    // RFC 9110, section 8.3.2.
    [Theory]
    [InlineData("application/json; charset=UTF-8")]
    [InlineData("application/json; charset=\"utf-8\"")]
    public async Task A_charset_in_quotation_marks_is_the_same_charset(string contentType)
    {
        using HttpResponseMessage response = await service.PostAsync("validations", "{}"u8.ToArray(), contentType);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Fact]
    public async Task An_order_without_a_content_type_is_415()
    {
        using ByteArrayContent content = new("{}"u8.ToArray());
        using HttpResponseMessage response = await service.Http.PostAsync("/v1/quotes", content);

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, response.StatusCode);
        await response.ProblemAsync();
    }

    [Theory]
    [InlineData("text/csv")]
    [InlineData("application/json;q=0")]
    [InlineData("*/*, application/json;q=0")]
    [InlineData("nonsense")]
    public async Task An_accept_header_that_leaves_nothing_is_406(string accept)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, "/v1/catalogue");
        Assert.True(request.Headers.TryAddWithoutValidation("Accept", accept));
        using HttpResponseMessage response = await service.Http.SendAsync(request);

        Assert.Equal(HttpStatusCode.NotAcceptable, response.StatusCode);
        await response.ProblemAsync();
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task An_order_longer_than_a_mebibyte_is_413_whether_its_length_is_told_or_not(bool chunked)
    {
        byte[] body = [.. Enumerable.Repeat((byte)' ', (1 << 20) + 1)];
        using HttpRequestMessage request = new(HttpMethod.Post, "/v1/quotes") { Content = new StreamContent(new MemoryStream(body)) };
        request.Content.Headers.ContentType = new("application/json");
        request.Content.Headers.ContentLength = chunked ? null : body.Length;
        request.Headers.TransferEncodingChunked = chunked;
        using HttpResponseMessage response = await service.Http.SendAsync(request);

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, response.StatusCode);
        await response.ProblemAsync();
    }

    [Fact]
    public async Task A_fault_of_ours_says_a_code_and_the_trace_and_nothing_else()
    {
        using RunningService broken = new(services => services.AddFailingBooks(), mayFail: true);
        using HttpResponseMessage response = await broken.PostAsync("quotes", """{ "priceBook": "nook" }""");
        JsonObject problem = await response.ProblemAsync();

        Assert.Equal(HttpStatusCode.InternalServerError, response.StatusCode);
        Assert.Equal("internal", problem["code"]!.GetValue<string>());
        Assert.DoesNotContain(FailingBooks.Secret, problem.ToJsonString(), StringComparison.Ordinal);
        Assert.Contains(nameof(FailingBooks), Assert.Single(broken.Errors), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_to_try_the_contract_is_served_whole_from_here()
    {
        string page = await service.Http.GetStringAsync("/docs/index.html");

        Assert.Contains("swagger-ui", page, StringComparison.Ordinal);
        Assert.DoesNotMatch("(src|href)=[\"'](https?:)?//", page);
    }

    [Theory]
    [InlineData("en", "Try the calls")]
    [InlineData("de", "Aufrufe ausprobieren")]
    [InlineData("fr", "Essayer les appels")]
    [InlineData("es", "Probar las llamadas")]
    public async Task The_page_to_try_the_contract_is_in_every_language(string language, string title)
    {
        using HttpResponseMessage response = await service.Http.GetAsync(
            new Uri($"/docs/index.html?language={language}", UriKind.Relative)
        );
        string page = await response.Content.ReadAsStringAsync();

        Assert.Equal([language], response.Content.Headers.ContentLanguage);
        Assert.Contains($"<html lang=\"{language}\">", page, StringComparison.Ordinal);
        Assert.Contains($"<h1>{title}</h1>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("{{", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    public async Task Health_is_told(string path) =>
        Assert.Contains("Healthy", await service.Http.GetStringAsync(path), StringComparison.Ordinal);
}
