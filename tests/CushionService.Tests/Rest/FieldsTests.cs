using System.Net;
using System.Text.Json.Nodes;
using CushionService.Tests.Access;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Rest;

/// <summary>A caller gets the fields that it asks for, in every call, and what there is not is refused.</summary>
public sealed class FieldsTests(RunningService service) : IClassFixture<RunningService>
{
    private const string Pad = "/v1/estimate?units=in&construction=boxed&outline=rectangle&width=44&depth=18&thickness=3&fabricWidth=54";

    [Fact]
    public async Task A_slim_quote_is_the_whole_one_without_the_rest()
    {
        JsonObject whole = await AnswerAsync("quotes");
        JsonObject slim = await AnswerAsync("quotes?fields=yardage,cost.total,pieces.id,pieces.marks.kind");

        Assert.Equal(["pieces", "yardage", "cost"], slim.Select(member => member.Key));
        Assert.True(JsonNode.DeepEquals(whole["yardage"], slim["yardage"]));
        Assert.Equal(["total"], slim["cost"]!.AsObject().Select(member => member.Key));
        Assert.Equal(whole["cost"]!["total"]!.GetValue<string>(), slim["cost"]!["total"]!.GetValue<string>());
        Assert.Equal(
            whole["pieces"]!.AsArray().Select(piece => piece!["id"]!.GetValue<string>()),
            slim["pieces"]!.AsArray().Select(piece => piece!["id"]!.GetValue<string>())
        );
        Assert.All(slim["pieces"]!.AsArray(), piece => Assert.Equal(["id", "marks"], piece!.AsObject().Select(member => member.Key)));
    }

    [Theory]
    [InlineData("quotes?fields=")]
    [InlineData("quotes?fields=*")]
    public async Task Nothing_asked_for_is_everything(string call) =>
        Assert.True(JsonNode.DeepEquals(await AnswerAsync("quotes"), await AnswerAsync(call)));

    [Theory]
    [InlineData("quotes?fields=cost,cost.total", "cost")]
    [InlineData("validations?fields=valid", "valid")]
    [InlineData("pieces?fields=seams", "seams")]
    [InlineData("layouts?fields=layouts.length", "layouts")]
    [InlineData("yardage?fields=yardage.soldLength", "yardage")]
    [InlineData("fits?fields=fits", "fits", true)]
    public async Task Every_call_takes_fields(string call, string member, bool fits = false)
    {
        JsonObject order = JsonNode.Parse(SampleOrder.Text)!.AsObject();
        if (fits)
        {
            order["fabrics"]![0]!["onHand"] = JsonNode.Parse("""[{"width":54,"length":400}]""");
        }

        using HttpResponseMessage response = await service.PostAsync(call, order.ToJsonString());
        JsonObject answer = await response.JsonAsync();

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal([member], answer.Select(entry => entry.Key));
    }

    [Theory]
    [InlineData("quotes?fields=price", "/fields unknown-field")]
    [InlineData("quotes?fields=Yardage", "/fields unknown-field")]
    [InlineData("quotes?fields=cost.sum,yardage,layouts.length.more", "/fields unknown-field", "/fields unknown-field")]
    [InlineData("quotes?fields=yardage,,cost", "/fields unknown-field")]
    [InlineData("quotes?fields=cost.total.units", "/fields unknown-field")]
    [InlineData("quotes?fields=cost&fields=yardage", "/fields duplicate-field")]
    [InlineData("quotes?colour=blue&fold=1", "/colour unknown-field", "/fold unknown-field")]
    [InlineData("validations?fields=cost", "/fields unknown-field")]
    [InlineData("layouts?piece=", "/piece unknown-field")]
    [InlineData("comparisons?a", "/a unknown-field")]
    [InlineData("quotes/stream?fields=lines", "/fields unknown-field")]
    public async Task What_there_is_not_is_refused_before_the_order_is_read(string call, params string[] expected)
    {
        using HttpResponseMessage response = await service.PostAsync(
            call,
            "{"u8.ToArray(),
            call.StartsWith("quotes/stream", StringComparison.Ordinal) ? "application/jsonl" : "application/json"
        );

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        Assert.Equal(expected, (await response.ProblemAsync()).Violations());
    }

    [Theory]
    [InlineData("labels", "printLabels")]
    [InlineData("pictures", "drawPicture")]
    public async Task An_answer_that_is_never_JSON_offers_no_fields_and_says_why(string call, string operation)
    {
        using HttpResponseMessage response = await service.PostAsync(call + "?fields=pieces", SampleOrder.Text);
        JsonNode violation = Assert.Single((await response.ProblemAsync())["violations"]!.AsArray())!;
        JsonNode document = JsonNode.Parse(await service.Http.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)))!;
        JsonNode described = document["paths"]![$"/v1/{call}"]!["post"]!;

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        Assert.Equal("/fields", (string)violation["pointer"]!);
        Assert.Contains("JSON alone", (string)violation["detail"]!, StringComparison.Ordinal);
        Assert.Equal(operation, (string)described["operationId"]!);
        Assert.DoesNotContain(described["parameters"]!.AsArray(), parameter => (string?)parameter!["name"] == "fields");
    }

    [Fact]
    public async Task A_hundred_unknown_paths_are_answered_with_twenty_faults()
    {
        string paths = string.Join(',', Enumerable.Range(0, 100).Select(number => $"x{number}"));
        using HttpResponseMessage response = await service.PostAsync($"quotes?fields={paths}", "{}");

        Assert.Equal(20, (await response.ProblemAsync()).Violations().Length);
    }

    [Fact]
    public async Task A_refused_order_is_refused_whole()
    {
        using HttpResponseMessage response = await service.PostAsync("yardage?fields=yardage", """{"units":"in"}""");

        Assert.Contains(" empty-order", (await response.ProblemAsync()).Violations());
    }

    [Fact]
    public async Task An_estimate_and_the_catalogue_have_a_tag_of_their_own_for_their_fields()
    {
        (JsonObject whole, string tag) = await GetAsync(Pad);
        (JsonObject slim, string slimTag) = await GetAsync(Pad + "&fields=soldLength,soldUnit");
        (_, string same) = await GetAsync(Pad + "&fields=soldUnit,soldLength");
        (JsonObject list, string listTag) = await GetAsync("/v1/catalogue?fields=outlines.kind");
        (_, string allTag) = await GetAsync("/v1/catalogue");

        Assert.Equal(["soldLength", "soldUnit"], slim.Select(member => member.Key));
        Assert.Equal(whole["soldLength"]!.GetValue<double>(), slim["soldLength"]!.GetValue<double>());
        Assert.NotEqual(tag, slimTag);
        Assert.Equal(slimTag, same);
        Assert.All(list["outlines"]!.AsArray(), outline => Assert.Single(outline!.AsObject()));
        Assert.NotEqual(listTag, allTag);
        using HttpResponseMessage refused = await service.Http.GetAsync(new Uri(Pad + "&fields=cost&colour=blue", UriKind.Relative));
        Assert.Equal(["/fields unknown-field", "/colour unknown-field"], (await refused.ProblemAsync()).Violations());
    }

    [Fact]
    public async Task Every_line_of_a_stream_is_slim()
    {
        string lines = Callers.Pillow.ReplaceLineEndings("") + "\n{}\n" + Callers.Pillow.ReplaceLineEndings("") + "\n";
        using HttpResponseMessage response = await service.PostAsync(
            "quotes/stream?fields=yardage.soldLength",
            System.Text.Encoding.UTF8.GetBytes(lines),
            "application/x-ndjson"
        );
        JsonObject[] answers =
        [
            .. (await response.Content.ReadAsStringAsync()).TrimEnd().Split('\n').Select(line => JsonNode.Parse(line)!.AsObject()),
        ];

        Assert.Equal("""{"yardage":[{"soldLength":0.625}]}""", answers[0].ToJsonString());
        Assert.Equal(2, answers[1]["line"]!.GetValue<int>());
        Assert.Equal(answers[0].ToJsonString(), answers[2].ToJsonString());
    }

    private async Task<JsonObject> AnswerAsync(string call)
    {
        using HttpResponseMessage response = await service.PostAsync(call, SampleOrder.Text);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return await response.JsonAsync();
    }

    private async Task<(JsonObject Answer, string Tag)> GetAsync(string path)
    {
        using HttpResponseMessage response = await service.Http.GetAsync(new Uri(path, UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return (await response.JsonAsync(), response.Headers.ETag!.Tag);
    }
}
