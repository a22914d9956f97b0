using System.Net;
using System.Text.Json.Nodes;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Orders;

/// <summary>Every construction by the contract: what it takes, and what it refuses.</summary>
public sealed class ConstructionTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task Every_construction_is_quoted_and_laid_out()
    {
        foreach ((string name, string cushion) in ConstructionOrders.All)
        {
            using HttpResponseMessage response = await service.PostAsync("quotes", ConstructionOrders.Of(cushion).ToJsonString());
            Assert.True(response.StatusCode == HttpStatusCode.OK, $"{name}: {await response.Content.ReadAsStringAsync()}");
            LayoutCheck.Check(await response.JsonAsync());
        }

        Assert.Equal(
            Enum.GetValues<Construction>().Length,
            ConstructionOrders.All.Select(order => order.Cushion.Split('"')[3]).Distinct().Count()
        );
    }

    [Theory]
    [InlineData("wedge", """{ "frontThickness": 6 }""", "/cushions/0/frontThickness out-of-range")]
    [InlineData("wedge", """{ "gores": 8 }""", "/cushions/0/gores not-applicable")]
    [InlineData("wedge", """{ "outline": { "kind": "circle", "diameter": 20 } }""", "/cushions/0/outline/kind not-combinable")]
    [InlineData(
        "wedge",
        """{ "outline": { "kind": "rectangle", "width": 20, "depth": 18, "corners": [1, 1, 1, 1] } }""",
        "/cushions/0/outline/corners not-combinable"
    )]
    [InlineData("wedge", """{ "closure": { "kind": "zipper", "side": "front" } }""", "/cushions/0/closure/side not-combinable")]
    [InlineData("wedge", """{ "innerCover": { "fabric": "calico" } }""", "/cushions/0/innerCover not-applicable")]
    [InlineData(
        "waterfall",
        """{ "front": "bull-nose", "thickness": 20, "outline": { "kind": "rectangle", "width": 24, "depth": 10 } }""",
        "/cushions/0/thickness out-of-range"
    )]
    [InlineData("waterfall", """{ "closure": { "kind": "envelope" } }""", "/cushions/0/closure/kind not-combinable")]
    [InlineData("mitred", """{ "boxing": { "joins": "back" } }""", "/cushions/0/boxing not-applicable")]
    [InlineData("gathered-corner", """{ "thickness": 20, "closure": { "kind": "hand-sewn" } }""", "/cushions/0/thickness out-of-range")]
    [InlineData(
        "gathered-corner",
        """{ "thickness": 19, "outline": { "kind": "rectangle", "width": 20, "depth": 20 } }""",
        "/cushions/0/closure/side side-too-short"
    )]
    [InlineData("bolster", """{ "length": null }""", "/cushions/0/length required")]
    [InlineData("bolster", """{ "thickness": 4 }""", "/cushions/0/thickness not-applicable")]
    [InlineData(
        "bolster",
        """{ "ends": { "tail": 6, "turning": 1 } }""",
        "/cushions/0/ends/tail not-applicable",
        "/cushions/0/ends/turning not-applicable"
    )]
    [InlineData("bolster-tied", """{ "closure": { "kind": "zipper", "lap": "3/8" } }""", "/cushions/0/closure/lap not-combinable")]
    [InlineData(
        "bolster",
        """{ "ends": { "kind": "gathered" }, "closure": { "kind": "zipper", "lap": "3/8" } }""",
        "/cushions/0/closure/lap not-combinable"
    )]
    [InlineData("flanged", """{ "flange": null }""", "/cushions/0/flange required")]
    [InlineData("flanged", """{ "flange": { "width": 2, "turning": 1 } }""", "/cushions/0/flange/turning not-applicable")]
    [InlineData("flanged", """{ "fill": { "kind": "foam" } }""", "/cushions/0/fill/kind not-combinable")]
    [InlineData("flanged", """{ "cornerTaper": "1/2" }""", "/cushions/0/cornerTaper not-applicable")]
    [InlineData("pouf-drum", """{ "gores": 2 }""", "/cushions/0/gores out-of-range")]
    [InlineData("pouf-drum", """{ "closure": { "kind": "zipper", "side": "back" } }""", "/cushions/0/closure/side not-combinable")]
    [InlineData("boxed-channels", """{ "channels": { "count": 4, "crown": 4 } }""", "/cushions/0/channels/crown out-of-range")]
    [InlineData(
        "boxed-channels",
        """{ "channels": { "count": 4, "crown": 1, "takeUp": 0.02 } }""",
        "/cushions/0/channels/takeUp not-applicable"
    )]
    [InlineData("boxed-round", """{ "channels": { "count": 4 } }""", "/cushions/0/channels not-combinable")]
    [InlineData("knife-edge-tapered", """{ "innerCover": { "fabric": "silk" } }""", "/cushions/0/innerCover/fabric unknown-fabric")]
    [InlineData("knife-edge-tapered", """{ "innerCover": {} }""", "/cushions/0/innerCover/fabric required")]
    [InlineData("knife-edge-tapered", """{ "fill": null }""", "/cushions/0/innerCover not-combinable")]
    [InlineData("knife-edge-tapered", """{ "length": 24 }""", "/cushions/0/length not-applicable")]
    [InlineData("knife-edge-tapered", """{ "outline": { "kind": "circle", "diameter": 20 } }""", "/cushions/0/cornerTaper not-combinable")]
    public async Task What_is_outside_the_catalogue_is_refused_with_all_its_faults(string name, string changes, params string[] expected)
    {
        JsonObject order = ConstructionOrders.Of(ConstructionOrders.All.Single(known => known.Name == name).Cushion);
        JsonObject cushion = order["cushions"]![0]!.AsObject();
        foreach ((string field, JsonNode? value) in JsonNode.Parse(changes)!.AsObject())
        {
            cushion.Remove(field);
            if (value is not null)
            {
                cushion[field] = value.DeepClone();
            }
        }

        using HttpResponseMessage response = await service.PostAsync("quotes", order.ToJsonString());
        Assert.Equal(expected, (await response.ProblemAsync()).Violations());
    }

    [Fact]
    public async Task The_catalogue_lists_the_sizes_of_every_outline_that_a_construction_takes()
    {
        JsonNode catalogue = JsonNode.Parse(await service.Http.GetStringAsync("/v1/catalogue"))!;
        HashSet<string> fields = [.. catalogue["fields"]!.AsArray().Select(field => field!["pointer"]!.GetValue<string>())];
        Dictionary<string, JsonArray> sizes = catalogue["outlines"]!
            .AsArray()
            .ToDictionary(outline => outline!["kind"]!.GetValue<string>(), outline => outline!["fields"]!.AsArray());

        Assert.All(
            catalogue["constructions"]!
                .AsArray()
                .SelectMany(construction => construction!["outlines"]!.AsArray())
                .Select(kind => kind!.GetValue<string>()),
            kind => Assert.Contains(sizes[kind], field => field!["required"]!.GetValue<bool>())
        );
        Assert.All(sizes.Values.SelectMany(each => each), field => Assert.Contains(field!["pointer"]!.GetValue<string>(), fields));
        Assert.Equal(
            [
                "/cushions/*/outline/frontWidth",
                "/cushions/*/outline/backWidth",
                "/cushions/*/outline/depth",
                "/cushions/*/outline/backOffset",
            ],
            sizes["trapezoid"].Select(field => field!["pointer"]!.GetValue<string>())
        );
    }

    [Fact]
    public async Task The_catalogue_lists_each_construction_s_own_fields_among_the_fields_of_an_order()
    {
        JsonNode catalogue = JsonNode.Parse(await service.Http.GetStringAsync("/v1/catalogue"))!;
        HashSet<string> fields = [.. catalogue["fields"]!.AsArray().Select(field => field!["pointer"]!.GetValue<string>())];
        JsonArray constructions = catalogue["constructions"]!.AsArray();

        Assert.Equal(ConstructionRegistry.All.Length, constructions.Count);
        Assert.All(
            constructions.SelectMany(construction => construction!["fields"]!.AsArray()),
            field => Assert.Contains(field!["pointer"]!.GetValue<string>(), fields)
        );
        Assert.Contains(
            constructions,
            construction =>
                construction!["kind"]!.GetValue<string>() == "bolster"
                && construction["fields"]!
                    .AsArray()
                    .Any(field => field!["pointer"]!.GetValue<string>() == "/cushions/*/length" && field["required"]!.GetValue<bool>())
        );
    }
}
