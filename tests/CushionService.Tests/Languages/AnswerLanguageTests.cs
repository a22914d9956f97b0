using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;
using Grpc.Core;

namespace CushionService.Tests.Languages;

/// <summary>Every answer is in the reader's language and says so, at both doors.</summary>
public sealed class AnswerLanguageTests(RunningService service) : IClassFixture<RunningService>
{
    private const string Pad = "units=in&construction=boxed&outline=rectangle&width=44&depth=18&thickness=3&fabricWidth=54";

    [Theory]
    [InlineData("POST", "quotes", SampleOrder.Text, "application/json", "application/json", 200)]
    [InlineData("POST", "quotes", SampleOrder.Text, "application/json", "text/html", 200)]
    [InlineData("POST", "pieces", SampleOrder.Text, "application/json", "application/pdf", 200)]
    [InlineData("POST", "quotes/stream", "{}\n", "application/x-ndjson", "application/x-ndjson", 200)]
    [InlineData("POST", "quotes", "{}", "application/json", "application/json", 422)]
    [InlineData("POST", "quotes", "{", "application/json", "application/json", 400)]
    [InlineData("POST", "quotes", "{}", "text/plain", "application/json", 415)]
    [InlineData("POST", "quotes", "{}", "application/json", "image/png", 406)]
    [InlineData("GET", "quotes", null, "application/json", "application/json", 405)]
    [InlineData("GET", "nowhere", null, "application/json", "application/json", 404)]
    [InlineData("GET", "catalogue", null, "application/json", "application/json", 200)]
    [InlineData("GET", "estimate?" + Pad, null, "application/json", "application/json", 200)]
    public async Task An_answer_names_its_language_and_that_it_depends_on_the_callers(
        string method,
        string call,
        string? body,
        string type,
        string accept,
        int status
    )
    {
        using HttpResponseMessage response = await SendAsync(method, call, body, type, accept, "fr-CA, en;q=0.5");

        Assert.Equal(status, (int)response.StatusCode);
        Assert.Equal(["fr"], response.Content.Headers.ContentLanguage);
        Assert.Contains("Accept-Language", response.Headers.Vary);
    }

    [Theory]
    [InlineData("en", "Tax")]
    [InlineData("de", "Steuer")]
    [InlineData("fr", "Taxe")]
    [InlineData("es", "Impuesto")]
    public async Task A_tax_without_a_label_has_the_word_of_the_readers_language(string language, string label)
    {
        JsonNode order = JsonNode.Parse(SampleOrder.Text)!;
        order["costing"] = JsonNode.Parse("""{ "tax": { "rate": 0.2 } }""");
        using HttpResponseMessage response = await SendAsync(
            "POST",
            "quotes",
            order.ToJsonString(),
            "application/json",
            "application/json",
            language
        );

        Assert.Equal(label, (await response.JsonAsync())["cost"]!["additions"]![0]!["label"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("de", "Der Auftrag hat")]
    [InlineData("fr", "La commande")]
    [InlineData("es", "El pedido")]
    [InlineData("it", "The order has")]
    public async Task A_refusal_reads_the_same_at_both_doors(string language, string begin)
    {
        using HttpResponseMessage rest = await SendAsync("POST", "quotes", "{}", "application/json", "application/json", language);
        using HttpResponseMessage line = await SendAsync(
            "POST",
            "quotes/stream",
            "{}\n",
            "application/x-ndjson",
            "application/x-ndjson",
            language
        );
        using AsyncUnaryCall<QuoteResponse> call = service.Calls.QuoteAsync(
            new QuoteRequest { Order = new Order() },
            new Metadata { { "accept-language", language } }
        );
        RpcException refused = await Assert.ThrowsAsync<RpcException>(() => call.ResponseAsync);
        JsonObject problem = await rest.JsonAsync();

        Assert.StartsWith(begin, (string)problem["title"]!, StringComparison.Ordinal);
        Assert.Equal((string)problem["title"]!, refused.Status.Detail);
        Assert.Equal((string)problem["title"]!, (string)JsonNode.Parse(await line.Content.ReadAsStringAsync())!["title"]!);
    }

    // .NET's client of gRPC shows no header of this name, since HTTP counts it to the body's; others do.
    [Fact]
    public async Task Metadata_of_gRPC_name_the_language()
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri("/cushionservice.v1.CushionService/GetCatalogue", UriKind.Relative))
        {
            Version = HttpVersion.Version20,
            Content = new ByteArrayContent(new byte[5]),
        };
        request.Content.Headers.ContentType = new MediaTypeHeaderValue("application/grpc");
        request.Headers.Add("accept-language", "es-MX");
        using HttpResponseMessage response = await service.Http.SendAsync(request);

        Assert.Equal(["es"], response.Content.Headers.ContentLanguage);
        Assert.NotEmpty(await response.Content.ReadAsByteArrayAsync());
    }

    [Theory]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    public async Task An_estimate_has_a_tag_of_its_own_in_each_language(string language)
    {
        using HttpResponseMessage english = await SendAsync("GET", "estimate?" + Pad, null, "", "application/json", "en");
        using HttpResponseMessage named = await SendAsync("GET", $"estimate?{Pad}&language={language}", null, "", "application/json", "en");
        using HttpResponseMessage asked = await SendAsync("GET", "estimate?" + Pad, null, "", "application/json", language);

        Assert.Equal([language], named.Content.Headers.ContentLanguage);
        Assert.Equal(asked.Headers.ETag, named.Headers.ETag);
        Assert.NotEqual(english.Headers.ETag, named.Headers.ETag);
        Assert.Equal(await asked.Content.ReadAsByteArrayAsync(), await named.Content.ReadAsByteArrayAsync());
    }

    [Theory]
    [InlineData("language=it", "unknown-value")]
    [InlineData("language=de-AT", "unknown-value")]
    [InlineData("language=", "unknown-value")]
    [InlineData("language=de&language=fr", "duplicate-field")]
    public async Task A_language_that_the_service_does_not_write_is_refused_with_the_choices(string query, string code)
    {
        using HttpResponseMessage response = await SendAsync("GET", $"estimate?{Pad}&{query}", null, "", "application/json", "en");
        JsonNode violation = (await response.JsonAsync())["violations"]![0]!;

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        Assert.Equal(("/language", code), ((string)violation["pointer"]!, (string)violation["code"]!));
        if (code == "unknown-value")
        {
            Assert.Equal("The language must be en, de, fr or es.", (string)violation["detail"]!);
        }
    }

    private async Task<HttpResponseMessage> SendAsync(string method, string call, string? body, string type, string accept, string language)
    {
        using HttpRequestMessage request = new(new HttpMethod(method), new Uri($"/v1/{call}", UriKind.Relative));
        request.Headers.Accept.ParseAdd(accept);
        request.Headers.AcceptLanguage.ParseAdd(language);
        if (body is not null)
        {
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body));
            request.Content.Headers.ContentType = new MediaTypeHeaderValue(type);
        }

        return await service.Http.SendAsync(request);
    }
}
