using System.Net;
using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Estimating;

/// <summary>One cushion from flat parameters, as a page or a cache asks for it.</summary>
public sealed class EstimateTests(RunningService service) : IClassFixture<RunningService>
{
    private const string Pad = "units=in&construction=boxed&outline=rectangle&width=44&depth=18&thickness=3&fabricWidth=54";

    [Fact]
    public async Task It_says_what_the_same_order_takes_in_a_call_of_its_own()
    {
        using HttpResponseMessage response = await GetAsync(
            Pad + "&fabricSelvedge=1/2&fabricShrinkageLength=0.03&quantity=3&effort=standard&closure=hook-and-loop"
        );
        using HttpResponseMessage full = await service.PostAsync(
            "yardage",
            """
            {"units":"in","effort":"standard",
             "cushions":[{"id":"cushion","quantity":3,"construction":"boxed","outline":{"kind":"rectangle","width":44,"depth":18},
               "thickness":3,"closure":{"kind":"hook-and-loop"}}],
             "fabrics":[{"id":"fabric","width":54,"selvedge":"1/2","shrinkage":{"length":0.03},"sold":{"unit":"yd","step":"1/8"}}]}
            """
        );
        JsonObject estimate = await response.JsonAsync(),
            line = (await full.JsonAsync())["yardage"]![0]!.AsObject();

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.All(
            ["soldLength", "soldUnit", "layoutLength", "provenMinimal", "because"],
            name => Assert.True(JsonNode.DeepEquals(line[name], estimate[name]), name)
        );
    }

    [Fact]
    public async Task It_says_what_only_the_layout_shows()
    {
        using HttpResponseMessage response = await GetAsync(
            "units=in&construction=knife-edge&outline=rectangle&width=18&depth=18&closure=hand-sewn&fabricWidth=54&fabricRepeatLength=20"
                + "&fabricShrinkageLength=0"
        );
        JsonNode warning = Assert.Single((await response.JsonAsync())["warnings"]!.AsArray())!;

        Assert.Equal(("/fabricRepeatLength", "motif-unknown"), ((string)warning["pointer"]!, (string)warning["code"]!));
    }

    // A step of 0.01 where none is given; what is laid weighs its length × 54 in × 300 g/m².
    [Fact]
    public async Task Fabric_by_weight_is_estimated_by_weight()
    {
        using HttpResponseMessage response = await GetAsync(Pad + "&fabricSoldUnit=kg&fabricWeight=300");
        JsonObject estimate = await response.JsonAsync();
        double kilograms = estimate["soldLength"]!.GetValue<double>(),
            needed = estimate["layoutLength"]!.GetValue<double>() * 0.0254 * 54 * 0.0254 * 0.3;

        Assert.Equal("kg", estimate["soldUnit"]!.GetValue<string>());
        Assert.Equal(Math.Ceiling(needed * 100) / 100, kilograms, 6);
    }

    [Theory]
    [InlineData("width=44.0")]
    [InlineData("width=44 in")]
    [InlineData("width=1117.6 mm")]
    [InlineData("width=44&fabricSoldUnit=yd&fabricSoldStep=0.125")]
    [InlineData("width=44&quantity=1.0")]
    [InlineData("width=44&fabricShrinkageLength=0.030")]
    public async Task Other_spellings_have_the_same_tag_and_answer(string spelling)
    {
        string plain =
            spelling.Contains("quantity", StringComparison.Ordinal) ? Pad + "&quantity=1"
            : spelling.Contains("Shrinkage", StringComparison.Ordinal) ? Pad + "&fabricShrinkageLength=0.03"
            : Pad;
        string other = plain.Replace("width=44", spelling, StringComparison.Ordinal);
        other = string.Join('&', other.Split('&').DistinctBy(part => part.Split('=')[0]).Reverse());
        using HttpResponseMessage one = await GetAsync(plain),
            two = await GetAsync(other);

        Assert.Equal(HttpStatusCode.OK, two.StatusCode);
        Assert.NotNull(one.Headers.ETag);
        Assert.Equal(one.Headers.ETag, two.Headers.ETag);
        Assert.Equal(await one.Content.ReadAsByteArrayAsync(), await two.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public async Task Every_other_order_has_another_tag()
    {
        string[] queries =
        [
            Pad,
            Pad.Replace("44", "44.125", StringComparison.Ordinal),
            Pad.Replace("44", "44 cm", StringComparison.Ordinal),
            Pad + "&quantity=2",
            Pad + "&fabricGrain=railroaded",
            Pad + "&fabricSoldStep=1/4",
            Pad + "&effort=standard",
            Pad + "&closure=hand-sewn",
            Pad + "&fabricSelvedge=1/2",
            Pad + "&workroomCuttingStep=1/4",
        ];
        HashSet<string> tags = [];
        foreach (string query in queries)
        {
            using HttpResponseMessage response = await GetAsync(query);
            tags.Add(response.Headers.ETag!.Tag);
            Assert.False(response.Headers.ETag.IsWeak);
            Assert.Equal("public, max-age=86400", response.Headers.CacheControl!.ToString());
        }

        Assert.Equal(queries.Length, tags.Count);
    }

    // RFC 9110, section 13.1.2.
    [Theory]
    [InlineData("GET", "{tag}", HttpStatusCode.NotModified)]
    [InlineData("GET", "W/{tag}", HttpStatusCode.NotModified)]
    [InlineData("GET", "\"other\", {tag}", HttpStatusCode.NotModified)]
    [InlineData("GET", "*", HttpStatusCode.NotModified)]
    [InlineData("HEAD", "{tag}", HttpStatusCode.NotModified)]
    [InlineData("GET", "\"other\"", HttpStatusCode.OK)]
    [InlineData("GET", "nonsense", HttpStatusCode.OK)]
    [InlineData("GET", null, HttpStatusCode.OK)]
    [InlineData("HEAD", null, HttpStatusCode.OK)]
    public async Task A_caller_who_holds_the_answer_is_not_sent_it_again(string method, string? held, HttpStatusCode expected)
    {
        using HttpResponseMessage first = await GetAsync(Pad);
        string tag = first.Headers.ETag!.Tag;
        using HttpRequestMessage request = new(new HttpMethod(method), "/v1/estimate?" + Pad);
        request.Headers.TryAddWithoutValidation("If-None-Match", held?.Replace("{tag}", tag, StringComparison.Ordinal));
        using HttpResponseMessage response = await service.Http.SendAsync(request);

        Assert.Equal(expected, response.StatusCode);
        Assert.Equal(tag, response.Headers.ETag!.Tag);
        Assert.Equal("public, max-age=86400", response.Headers.CacheControl!.ToString());
        Assert.Equal(expected == HttpStatusCode.OK && method == "GET", (await response.Content.ReadAsByteArrayAsync()).Length > 0);
    }

    [Theory]
    [InlineData(Pad + "&colour=blue", 422, "/colour unknown-field")]
    [InlineData(Pad + "&colour=blue&fold=1", 422, "/colour unknown-field", "/fold unknown-field")]
    [InlineData(Pad + "&depth=12", 422, "/depth duplicate-field")]
    [InlineData(
        "units=in&construction=boxed&outline=rectangle&width=about&depth=18&fabricWidth=540",
        422,
        "/fabricWidth out-of-range",
        "/thickness required",
        "/width not-a-length"
    )]
    [InlineData("construction=boxed&outline=rectangle&width=44&depth=18&thickness=3&fabricWidth=54", 422, "/units required")]
    [InlineData("units=in&fabricWidth=54", 422, "/construction required", "/outline required")]
    [InlineData(
        "units=in&construction=box&outline=rectangle&width=44&depth=18&thickness=3&fabricWidth=54",
        422,
        "/construction unknown-value"
    )]
    [InlineData("units=in&construction=flanged&outline=rectangle&width=18&depth=18&fabricWidth=54", 422, "/flangeWidth required")]
    [InlineData(Pad + "&quantity=two", 400, "/quantity wrong-type")]
    [InlineData(Pad + "&quantity=0", 422, "/quantity out-of-range")]
    [InlineData(Pad + "&closure=buttoned", 422, "/closure unknown-value")]
    [InlineData(Pad + "&fabricGrain=sideways", 422, "/fabricGrain unknown-value")]
    [InlineData("units=in&construction=boxed&outline=rectangle&width=144&depth=118&thickness=3&fabricWidth=54", 422, " wider-than-fabric")]
    public async Task A_fault_is_told_by_its_parameter(string query, int status, params string[] expected)
    {
        using HttpResponseMessage response = await GetAsync(query);
        JsonObject problem = await response.ProblemAsync();

        Assert.Equal(status, (int)response.StatusCode);
        Assert.Equal(expected.Order(), problem.Violations().Distinct().Order());
        Assert.Null(response.Headers.ETag);
    }

    // No parameter has a list of corners.
    [Fact]
    public async Task A_polygon_is_not_offered_and_is_sent_to_the_call_that_takes_it()
    {
        string pad = Pad.Replace("=rectangle", "=polygon", StringComparison.Ordinal);
        JsonNode polygon = await ViolationAsync(pad, "/outline"),
            unknown = await ViolationAsync(pad.Replace("=polygon", "=blob", StringComparison.Ordinal), "/outline");
        JsonNode document = JsonNode.Parse(await service.Http.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)))!;
        string[] offered =
        [
            .. document["paths"]!["/v1/estimate"]!["get"]!["parameters"]!
                .AsArray()
                .Single(parameter => (string?)parameter!["name"] == "outline")!["schema"]!["enum"]!
                .AsArray()
                .Select(word => (string)word!),
        ];

        Assert.Contains("POST /v1/quotes", (string)polygon["detail"]!, StringComparison.Ordinal);
        Assert.DoesNotContain(" polygon", (string)unknown["detail"]!, StringComparison.Ordinal);
        Assert.Contains("rectangle", offered);
        Assert.DoesNotContain("polygon", offered);
    }

    // width is a parameter of its own, and so is the width of everything else.
    [Theory]
    [InlineData("", "/fabricWidth", "Width of the fabric is required.")]
    [InlineData("&language=de", "/fabricWidth", "Breite des Stoffs")]
    [InlineData("&language=fr", "/fabricWidth", "Largeur du tissu")]
    [InlineData("&language=es", "/fabricWidth", "Ancho de la tela")]
    [InlineData("&fabricWidth=wide", "/fabricWidth", "Width of the fabric ")]
    [InlineData("&handle=folded-strap", "/handleWidth", "Width (handleWidth) is required.")]
    [InlineData("&handle=folded-strap&language=de", "/handleLength", "Länge (handleLength): ")]
    [InlineData("&handle=folded-strap", "/handleSpan", "Span (handleSpan) is required.")]
    public async Task A_sentence_names_the_parameter_that_is_to_be_corrected(string more, string pointer, string begins)
    {
        JsonNode violation = await ViolationAsync(Pad.Replace("&fabricWidth=54", more, StringComparison.Ordinal), pointer);

        Assert.StartsWith(begins, (string)violation["detail"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("en", "fabric")]
    [InlineData("de", "Stoff")]
    [InlineData("fr", "tissu")]
    [InlineData("es", "tela")]
    public async Task The_fabric_is_called_by_the_word_of_the_language(string language, string word)
    {
        using HttpResponseMessage response = await GetAsync(Pad + "&language=" + language);
        JsonNode warning = (await response.JsonAsync())["warnings"]!.AsArray().Single(one => (string)one!["code"]! == "shrinkage-unknown")!;

        Assert.Equal("/fabricShrinkageLength", (string)warning["pointer"]!);
        Assert.Contains(word, (string)warning["detail"]!, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(language == "en", ((string)warning["detail"]!).Contains("fabric", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public async Task The_page_says_what_a_flanged_cushion_takes()
    {
        string page = await PageAsync(
            "units=in&construction=flanged&outline=rectangle&width=18&depth=18&thickness=&flangeWidth=2&quantity=1&fabricWidth=54"
        );

        Assert.Contains("id=\"flangeWidth\"", page, StringComparison.Ordinal);
        Assert.Contains("class=\"amount\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_that_there_is_not_is_406()
    {
        using HttpRequestMessage request = new(HttpMethod.Get, "/v1/estimate?" + Pad);
        request.Headers.TryAddWithoutValidation("Accept", "image/svg+xml");
        using HttpResponseMessage response = await service.Http.SendAsync(request);

        Assert.Equal(HttpStatusCode.NotAcceptable, response.StatusCode);
    }

    private async Task<JsonNode> ViolationAsync(string query, string pointer)
    {
        using HttpResponseMessage response = await GetAsync(query);
        JsonArray violations = (await response.ProblemAsync())["violations"]!.AsArray();
        return violations.First(violation => (string)violation!["pointer"]! == pointer)!;
    }

    private async Task<string> PageAsync(string query)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, "/v1/estimate?" + query);
        request.Headers.Accept.ParseAdd("text/html");
        using HttpResponseMessage response = await service.Http.SendAsync(request);
        return await response.Content.ReadAsStringAsync();
    }

    private Task<HttpResponseMessage> GetAsync(string query) => service.Http.GetAsync(new Uri("/v1/estimate?" + query, UriKind.Relative));
}
