using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Fitting;

/// <summary>Hides on hand, and a second dye lot beside a short bolt, as a caller meets them. Centimetres, seams of 1.5.</summary>
public sealed class HideTests(RunningService service) : IClassFixture<RunningService>
{
    private const string Pad = """
        { "id": "pad", "label": "Stool pad", "quantity": 2, "construction": "knife-edge",
          "outline": { "kind": "rectangle", "width": 47, "depth": 47 }, "closure": { "kind": "hand-sewn" } }
        """;

    // Faces of 47 + 3 = 50: one in the right angle of a triangle with legs of 100, so four such hides hold two pads, and three do not.
    [Theory]
    [InlineData(4, "fits", 0)]
    [InlineData(3, "not-found", 1)]
    public async Task Pads_are_cut_from_hides(int hides, string verdict, int unplaced)
    {
        JsonObject fit = await Fit(
            $$"""
            { "id": "leather", "width": 200, "customerOwned": true,
              "onHand": [{ "points": [[10, 5], [10, 105], [110, 5]], "quantity": {{hides}}, "lot": "A" }] }
            """
        );

        JsonNode leather = fit["fabrics"]![0]!;
        Assert.Equal(verdict, leather["verdict"]!.GetValue<string>());
        Assert.Equal(unplaced, leather["unplaced"]!.AsArray().Sum(piece => piece!["copies"]!.GetValue<int>()));
        foreach (JsonNode? hide in leather["offcuts"]!.AsArray())
        {
            Assert.Equal((100, 100), (hide!["width"]!.GetValue<double>(), hide["length"]!.GetValue<double>()));
            Assert.Empty(hide["left"]!.AsArray());
            Assert.All(
                hide["placements"]!.AsArray(),
                at => Assert.Equal((0, 0), (at!["x"]!.GetValue<double>(), at["y"]!.GetValue<double>()))
            );
        }

        // A length would say nothing of how many hides are needed.
        Assert.Empty(fit["missing"]!.AsArray());
        Assert.Empty(fit["secondLots"]!.AsArray());
    }

    [Theory]
    [InlineData("""[{ "points": [[0, 0], [100, 0], [0, 100]], "width": 90 }]""", "/onHand/0/width not-applicable")]
    [InlineData("""[{ "width": 90 }]""", "/onHand/0/length required")]
    [InlineData("""[{ "points": [[0, 0], [201, 0], [0, 100]] }]""", "/onHand/0/points out-of-range")]
    [InlineData("""[{ "points": [[0, 0], [100, 100], [100, 0], [0, 100]] }]""", "/onHand/0/points not-a-shape")]
    [InlineData("""[{ "points": [[0, 0], [100, 0]] }]""", "/onHand/0/points out-of-range")]
    [InlineData("""[{ "points": [[0, 0], [100, 0], [0, 100]] }], "repeat": { "length": 20 }""", "/repeat not-combinable")]
    public async Task What_is_no_hide_is_refused(string onHand, string violation)
    {
        JsonObject problem = await Fit($$"""{ "id": "leather", "width": 200, "customerOwned": true, "onHand": {{onHand}} }""");

        Assert.Equal([$"/fabrics/0{violation}"], problem["violations"]!.AsArray().Select(one => $"{one!["pointer"]} {one["code"]}"));
    }

    // On 140 cm two faces of 50 lie side by side: 60 cm of the bolt hold a whole pad, and the other takes 50 cm: 0.5 m at 20.00.
    [Fact]
    public async Task A_short_bolt_is_cut_up_whole_and_a_second_lot_bought_for_the_rest()
    {
        JsonObject fit = await Fit(
            """
            { "id": "main", "label": "Ticking", "width": 140, "lot": "A", "sold": { "unit": "m", "step": 0.1 },
              "price": { "amount": "20.00", "per": "m" }, "onHand": [{ "width": 140, "length": 60 }] }
            """
        );

        Assert.False(fit["fits"]!.GetValue<bool>());
        JsonObject lot = Assert.Single(fit["secondLots"]!.AsArray())!.AsObject();
        Assert.Equal(
            ("main", 50, 0.5, "m", "10.00"),
            (Text("fabric"), Number("length"), Number("soldLength"), Text("soldUnit"), Text("amount"))
        );
        Assert.Equal("""[{"cushion":"pad","quantity":1}]""", lot["onHand"]!.ToJsonString());
        Assert.Equal("""[{"cushion":"pad","quantity":1}]""", lot["bought"]!.ToJsonString());
        Assert.Equal("""[{"piece":"pad/top","copies":1},{"piece":"pad/bottom","copies":1}]""", lot["pieces"]!.ToJsonString());
        Assert.Equal(
            "Cut whole from what is on hand: 1 × Stool pad. 1 × Stool pad from 0.5 m of Ticking of another lot, since colours differ from "
                + "lot to lot.",
            Text("because")
        );

        string Text(string name) => lot[name]!.GetValue<string>();
        double Number(string name) => lot[name]!.GetValue<double>();
    }

    private async Task<JsonObject> Fit(string fabric)
    {
        using HttpResponseMessage response = await service.PostAsync(
            "fits",
            $$"""{ "units": "cm", "currency": "EUR", "effort": "quick", "cushions": [{{Pad}}], "fabrics": [{{fabric}}] }"""
        );
        return JsonNode.Parse(await response.Content.ReadAsStringAsync())!.AsObject();
    }
}
