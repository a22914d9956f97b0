using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using CushionService.Documents.Pictures;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Documents.Pictures;

/// <summary>Pictures as callers get them.</summary>
public sealed class PictureCallTests(RunningService service) : IClassFixture<RunningService>
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Demo");

    public static TheoryData<string> Demos => [.. Directory.GetFiles(Folder, "*.json").Select(file => Path.GetFileName(file)!).Order()];

    public static TheoryData<string> Constructions => [.. ConstructionOrders.All.Select(order => order.Name)];

    [Theory]
    [MemberData(nameof(Demos))]
    public async Task Every_cushion_of_every_demo_order_is_drawn_in_30_kB(string file)
    {
        string text = await File.ReadAllTextAsync(Path.Combine(Folder, file));
        JsonNode order = JsonNode.Parse(text)!;
        if (order["priceBook"] is not null || order["cushions"] is null)
        {
            return;
        }

        foreach (string id in order["cushions"]!.AsArray().Select(cushion => (string)cushion!["id"]!))
        {
            foreach (string view in (string[])["finished", "exploded"])
            {
                string picture = await DrawnAsync($"pictures?cushion={id}&view={view}", text);
                Assert.InRange(Encoding.UTF8.GetByteCount(picture), 1000, CushionPicture.UsualBytes);
                XElement svg = XElement.Parse(picture);
                Assert.Equal("img", svg.Attribute("role")?.Value);
                Assert.All(
                    svg.Attribute("aria-labelledby")!.Value.Split(' '),
                    named => Assert.Single(svg.Descendants(), element => element.Attribute("id")?.Value == named)
                );
            }
        }
    }

    [Theory]
    [MemberData(nameof(Constructions))]
    public async Task Every_construction_is_drawn_whole_and_apart(string name)
    {
        string order = ConstructionOrders.Of(ConstructionOrders.All.Single(one => one.Name == name).Cushion).ToJsonString();
        foreach (string view in (string[])["finished", "exploded"])
        {
            XElement svg = XElement.Parse(await DrawnAsync($"pictures?view={view}", order));
            double[] box = [.. svg.Attribute("viewBox")!.Value.Split(' ').Select(number => double.Parse(number, Invariant))];
            double[] numbers =
            [
                .. svg.Descendants()
                    .Select(element => element.Attribute("d")?.Value)
                    .OfType<string>()
                    .SelectMany(path => path.Split(['M', 'L', 'Z', ' '], StringSplitOptions.RemoveEmptyEntries))
                    .Select(number => double.Parse(number, Invariant)),
            ];
            Assert.NotEmpty(numbers);
            Assert.All(numbers.Where((_, i) => i % 2 == 0), x => Assert.InRange(x, 0, box[2]));
            Assert.All(numbers.Where((_, i) => i % 2 == 1), y => Assert.InRange(y, 0, box[3]));
        }
    }

    [Fact]
    public async Task Of_several_cushions_one_is_named_and_a_refusal_lists_them()
    {
        string order = await File.ReadAllTextAsync(Path.Combine(Folder, "every-outline.json"));
        using HttpResponseMessage response = await PostAsync("pictures", order);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        await response.ProblemAsync();
        Assert.Contains("tee", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pictures?view=sideways", HttpStatusCode.BadRequest)]
    [InlineData("pictures?cushion=other", HttpStatusCode.BadRequest)]
    [InlineData("pictures?colour=red", HttpStatusCode.UnprocessableEntity)]
    public async Task What_there_is_not_is_refused(string call, HttpStatusCode status)
    {
        using HttpResponseMessage response = await PostAsync(call, Plain("Seat").ToJsonString());

        Assert.Equal(status, response.StatusCode);
        await response.ProblemAsync();
    }

    [Theory]
    [InlineData("<script>alert(1)</script>&\"'")]
    [InlineData("כרית לספסל הקריאה")]
    [InlineData("a name of exactly sixty characters, as long as they may come")]
    [InlineData("line\u0000\u202Eend\n")]
    public async Task Any_label_is_written_so_that_the_picture_stays_well_formed(string label)
    {
        foreach (string view in (string[])["finished", "exploded"])
        {
            XElement svg = XElement.Parse(await DrawnAsync($"pictures?view={view}", Plain(label).ToJsonString()));
            XElement title = svg.Elements().First(element => element.Name.LocalName == "title");

            Assert.Contains(CushionService.Documents.PrintableText.Of(label), title.Value, StringComparison.Ordinal);
            Assert.DoesNotContain(svg.Descendants(), element => element.Name.LocalName == "script");
        }
    }

    [Theory]
    [InlineData("#8a6d3b", "#8a6d3b")]
    [InlineData("#ABC", "#aabbcc")]
    public async Task A_colour_is_drawn_and_may_be_replaced_by_a_style_sheet(string colour, string drawn)
    {
        JsonObject order = Plain("Seat");
        order["fabrics"]![0]!["colour"] = colour;
        string picture = await DrawnAsync("pictures", order.ToJsonString());

        Assert.Contains($"fill=\"{drawn}\" style=\"fill:var(--cushion-fabric-1,{drawn})\"", picture, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("red")]
    [InlineData("#12345")]
    [InlineData("#fff;stroke:url(x)")]
    [InlineData("#fff\n")]
    public async Task What_is_no_colour_is_refused_where_it_is(string colour)
    {
        JsonObject order = Plain("Seat");
        order["fabrics"]![0]!["colour"] = colour;
        using HttpResponseMessage response = await PostAsync("pictures", order.ToJsonString());

        Assert.Equal(["/fabrics/0/colour bad-form"], (await response.ProblemAsync()).Violations());
    }

    [Fact]
    public async Task A_thousand_pieces_are_drawn_in_30_kB()
    {
        JsonObject order = Plain("Seat");
        order["cushions"]![0]!["quantity"] = 167;
        order["fabrics"]![0]!["repeat"] = JsonNode.Parse("""{ "length": 6, "width": 6 }""");
        string picture = await DrawnAsync("pictures", order.ToJsonString());

        Assert.InRange(Encoding.UTF8.GetByteCount(picture), 1000, CushionPicture.UsualBytes);
    }

    private static readonly IFormatProvider Invariant = System.Globalization.CultureInfo.InvariantCulture;

    private static JsonObject Plain(string label) =>
        JsonNode
            .Parse(
                """
                { "units": "in",
                  "cushions": [ { "id": "seat", "construction": "boxed", "outline": { "kind": "rectangle", "width": 20, "depth": 18 },
                    "thickness": 3, "closure": { "kind": "zipper" }, "fabrics": { "top": "main" } } ],
                  "fabrics": [ { "id": "main", "width": 54, "sold": { "unit": "yd", "step": "1/8" } } ] }
                """
            )!
            .AsObject()
            is var order
        && (order["cushions"]![0]!["label"] = label) is not null
            ? order
            : throw new InvalidOperationException();

    private async Task<string> DrawnAsync(string call, string order)
    {
        using HttpResponseMessage response = await PostAsync(call, order);
        string text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        Assert.Equal("image/svg+xml", response.Content.Headers.ContentType?.MediaType);
        return text;
    }

    private async Task<HttpResponseMessage> PostAsync(string call, string order)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri($"/v1/{call}", UriKind.Relative));
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("image/svg+xml"));
        request.Content = new StringContent(order, Encoding.UTF8, "application/json");
        return await service.Http.SendAsync(request);
    }
}
