using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Rest;

/// <summary>The address that a problem has as its type explains the code (RFC 9457, section 3.1.1).</summary>
public sealed class CodePageTests(RunningService service) : IClassFixture<RunningService>
{
    public static TheoryData<string> Codes => [.. CodeRegister.All.Select(code => code.Name)];

    [Theory]
    [MemberData(nameof(Codes))]
    public async Task Every_code_is_explained_to_programs_and_to_people(string code)
    {
        JsonNode json = JsonNode.Parse(await service.Http.GetStringAsync(Relative($"/problems/{code}")))!;
        Assert.Equal(code, (string?)json["code"]);
        Assert.Equal($"/problems/{code}", (string?)json["type"]);
        Assert.EndsWith(".", (string?)json["meaning"], StringComparison.Ordinal);
        Assert.NotEmpty(json["uses"]!.AsArray());

        using HttpRequestMessage request = new(HttpMethod.Get, $"/problems/{code}") { Headers = { { "Accept", "text/html,*/*;q=0.8" } } };
        using HttpResponseMessage page = await service.Http.SendAsync(request);
        Assert.Equal("text/html", page.Content.Headers.ContentType?.MediaType);
        Assert.Contains($"<h1>{code}</h1>", await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task All_codes_are_listed()
    {
        JsonNode all = JsonNode.Parse(await service.Http.GetStringAsync(Relative("/problems")))!;
        Assert.Equal(CodeRegister.All.Select(code => code.Name), all.AsArray().Select(code => (string?)code!["code"]));
    }

    [Theory]
    [InlineData("{}", 422, "invalid-order")]
    [InlineData("{", 400, "unreadable-order")]
    public async Task The_type_of_a_problem_leads_to_its_code(string order, int status, string code)
    {
        using HttpResponseMessage answer = await service.PostAsync("quotes", order);
        Assert.Equal(status, (int)answer.StatusCode);
        JsonNode problem = JsonNode.Parse(await answer.Content.ReadAsStringAsync())!;
        Assert.Equal(code, (string?)problem["code"]);
        Uri type = new((string)problem["type"]!, UriKind.Absolute);
        Assert.Equal(code, (string?)JsonNode.Parse(await service.Http.GetStringAsync(type))!["code"]);
    }

    [Fact]
    public async Task A_service_with_a_public_address_writes_that()
    {
        using RunningService known = new(_ => { }, settings: ("PUBLIC_URL", "https://cushions.example/shop/"));
        using HttpResponseMessage answer = await known.PostAsync("quotes", "{}");
        JsonNode problem = JsonNode.Parse(await answer.Content.ReadAsStringAsync())!;
        Assert.Equal("https://cushions.example/shop/problems/invalid-order", (string?)problem["type"]);
    }

    [Fact]
    public async Task An_order_that_is_too_long_has_the_same_code_in_a_call_and_in_a_stream()
    {
        byte[] order = Encoding.UTF8.GetBytes(new string(' ', Limits.OrderBytes) + "{}");
        using HttpResponseMessage call = await service.PostAsync("quotes", order);
        using HttpResponseMessage stream = await service.PostAsync("quotes/stream", order, "application/x-ndjson");
        JsonNode one = JsonNode.Parse(await call.Content.ReadAsStringAsync())!,
            other = JsonNode.Parse(await stream.Content.ReadAsStringAsync())!;
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, call.StatusCode);
        Assert.Equal("order-too-long", (string?)one["code"]);
        Assert.Equal((string?)one["code"], (string?)other["code"]);
        Assert.Equal((string?)one["type"], (string?)other["type"]);
        Assert.Equal(1, (int?)other["line"]);
    }

    [Fact]
    public async Task A_code_that_there_is_not_has_no_page()
    {
        using HttpResponseMessage answer = await service.Http.GetAsync(Relative("/problems/no-such-code"));
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("\"not-found\"", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private static Uri Relative(string path) => new(path, UriKind.Relative);
}
