using System.Text;
using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Rest.OpenApi;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Contract;

/// <summary>Every example of the document is what the service does: an order is answered, an answer is that of its order, and a refusal has
/// the code of its status.</summary>
public sealed class ExampleTests(RunningService service) : IClassFixture<RunningService>
{
    private static readonly JsonObject Document = JsonNode.Parse(Repository.Read("openapi/v1.json"))!.AsObject();

    public static IEnumerable<object[]> Operations =>
        Document["paths"]!
            .AsObject()
            .SelectMany(path => path.Value!.AsObject().Select(operation => new object[] { path.Key, operation.Key }));

    public static TheoryData<string> Constructions => [.. ConstructionExamples.All.Keys];

    [Theory]
    [MemberData(nameof(Operations))]
    public async Task An_order_is_answered_as_the_example_says(string path, string method)
    {
        JsonNode operation = Document["paths"]![path]![method]!;
        foreach ((string mediaType, JsonNode? form) in operation["responses"]!["200"]!["content"]!.AsObject())
        {
            using HttpResponseMessage response = await SendAsync(path, method, operation, mediaType);
            Assert.Equal(200, (int)response.StatusCode);
            if (form!["example"] is { } example && path != "/v1/catalogue")
            {
                string text = await response.Content.ReadAsStringAsync();
                JsonNode answer = mediaType == "application/json" ? JsonNode.Parse(text)! : JsonValue.Create(text);
                Assert.True(JsonNode.DeepEquals(example, answer), $"{path} answers otherwise than its example.");
            }
            else
            {
                Assert.True(path == "/v1/catalogue" || mediaType != "application/json", $"{path} has no example of its answer.");
            }
        }
    }

    // One that is refused would go through no search.
    [Fact]
    public async Task The_order_that_the_service_warms_up_with_is_answered()
    {
        using var body = new StringContent(
            Repository.Read("src/CushionService/Operations/warm-up.json"),
            Encoding.UTF8,
            "application/json"
        );
        using HttpResponseMessage response = await service.Http.PostAsync("/v1/quotes", body);
        Assert.Equal(200, (int)response.StatusCode);
    }

    [Theory]
    [MemberData(nameof(Operations))]
    public void A_refusal_has_the_code_of_its_status(string path, string method)
    {
        foreach ((string status, JsonNode? response) in Document["paths"]![path]![method]!["responses"]!.AsObject())
        {
            if (status is not "200" and not "304")
            {
                JsonNode problem = response!["content"]!["application/problem+json"]!["example"]!;
                Code code = CodeRegister.Find((string)problem["code"]!)!;
                Assert.Equal(status, $"{code.Http}");
                Assert.Equal(status, $"{problem["status"]}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Constructions))]
    public async Task An_order_of_each_construction_is_quoted(string construction)
    {
        JsonNode examples = Document["paths"]!["/v1/quotes"]!["post"]!["requestBody"]!["content"]!["application/json"]!["examples"]!;
        using HttpResponseMessage response = await service.PostAsync("quotes", examples[construction]!["value"]!.ToJsonString());
        string answer = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, answer);
    }

    [Fact]
    public void Every_construction_has_an_example() => Assert.Equal(Words<Construction>.All.Order(), ConstructionExamples.All.Keys.Order());

    private async Task<HttpResponseMessage> SendAsync(string path, string method, JsonNode operation, string mediaType)
    {
        string query = string.Join(
            '&',
            (operation["parameters"]?.AsArray() ?? [])
                .Where(parameter => parameter!["example"] is not null)
                .Select(parameter => $"{parameter!["name"]}={parameter["example"]}")
        );
        // A drawing shows one fabric, and a picture one cushion.
        query = path == "/v1/pictures" ? "cushion=bench" : query;
        query = mediaType == "image/svg+xml" && path == "/v1/layouts" ? "fabric=main" : query;
        HttpRequestMessage request = new(new HttpMethod(method.ToUpperInvariant()), query.Length == 0 ? path : $"{path}?{query}");
        request.Headers.Add("Accept", mediaType);
        if (operation["requestBody"]?["content"]?.AsObject() is { } bodies)
        {
            (string sent, JsonNode? body) = bodies.First();
            JsonNode order = body!["example"] ?? body["examples"]!["nook"]!["value"]!;
            request.Content = new StringContent(order.ToJsonString(), Encoding.UTF8, sent);
        }

        return await service.Http.SendAsync(request);
    }
}
