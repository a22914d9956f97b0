using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Fitting;

/// <summary>Fabric on hand of several widths, and fabric that was bought as the yardage says.</summary>
public sealed class FitWidthTests(RunningService service) : IClassFixture<RunningService>
{
    // Common practice, no source: faces of 100 x 50 cm are cut 102 x 52, in three panels on 60 cm. Two of them lie with their panels one
    // above the other in six times 52 cm or less, and narrow ones side by side: 300 cm will do. A scrap of 10 cm takes none of it away.
    [Theory]
    [InlineData("quick", """{ "width": 60, "length": 300 }""", "fits")]
    [InlineData("quick", """{ "width": 60, "length": 300 }, { "width": 115, "length": 10 }""", "fits")]
    [InlineData("standard", """{ "width": 115, "length": 10 }, { "width": 60, "length": 300 }, { "width": 80, "length": 12 }""", "fits")]
    // 2 x 102 x 52 = 10 608 square centimetres, however they are divided; these have 60 x 40 + 115 x 10 = 3 550.
    [InlineData("quick", """{ "width": 60, "length": 40 }, { "width": 115, "length": 10 }""", "impossible")]
    public async Task A_scrap_besides_spoils_no_fit(string effort, string onHand, string verdict)
    {
        using HttpResponseMessage response = await service.PostAsync(
            "fits",
            $$"""
            { "units": "cm", "effort": "{{effort}}",
              "cushions": [{ "id": "a", "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 100, "depth": 50 },
                             "closure": { "kind": "hand-sewn", "side": "back" }, "faceJoins": "allow" }],
              "fabrics": [{ "id": "m", "width": 115, "sold": { "unit": "m", "step": "0.1" }, "shrinkage": {}, "onHand": [{{onHand}}] }] }
            """
        );

        Assert.Equal(verdict, (await response.JsonAsync())["fabrics"]![0]!["verdict"]!.GetValue<string>());
    }

    // Common practice, no source: who bought the length that the yardage names has enough, and is not told to buy more.
    [Theory]
    [InlineData(139, 72.5)]
    [InlineData(121, 58)]
    [InlineData(100, 80)]
    [InlineData(90, 45)]
    public async Task What_the_yardage_sells_holds_the_order_at_the_same_effort(double width, double depth)
    {
        JsonNode Order(string onHand) =>
            JsonNode.Parse(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $$"""
                    { "units": "cm", "effort": "quick",
                      "cushions": [{ "id": "a", "construction": "knife-edge",
                                     "outline": { "kind": "oval", "width": {{width}}, "depth": {{depth}} },
                                     "closure": { "kind": "hand-sewn", "side": "back" }, "faceJoins": "allow" }],
                      "fabrics": [{ "id": "m", "width": 115, "grain": "either", "shrinkage": { "length": 0, "width": 0.02 },
                                    "sold": { "unit": "m", "step": "1/3" }{{onHand}} }] }
                    """
                )
            )!;
        using HttpResponseMessage sold = await service.PostAsync("yardage", Order("").ToJsonString());
        double metres = (await sold.JsonAsync())["yardage"]![0]!["soldLength"]!.GetValue<double>();
        using HttpResponseMessage fit = await service.PostAsync(
            "fits",
            Order(string.Create(CultureInfo.InvariantCulture, $$""", "onHand": [{ "width": 115, "length": {{metres * 100}} }]"""))
                .ToJsonString()
        );

        Assert.Equal(HttpStatusCode.OK, fit.StatusCode);
        Assert.True((await fit.JsonAsync())["fits"]!.GetValue<bool>());
    }

    // Sizes in 1/64 and 1/32 in are no whole micrometres: a strip as wide as the fabric beside the motif is laid, and not refused.
    [Theory]
    [InlineData(
        """
            { "id": "a", "construction": "boxed", "outline": { "kind": "oval", "width": 41.375, "depth": 19.125 }, "thickness": 4.75,
              "closure": { "kind": "hook-and-loop" } }
            """,
        54,
        6.4,
        "1/64"
    )]
    [InlineData(
        """
            { "id": "a", "construction": "pouf", "outline": { "kind": "circle", "diameter": 34 }, "thickness": 8,
              "closure": { "kind": "hand-sewn" } }
            """,
        60,
        20,
        "1/32"
    )]
    public async Task A_fine_cutting_step_with_a_repeat_across_is_laid(string cushion, double width, double repeat, string step)
    {
        using HttpResponseMessage response = await service.PostAsync(
            "yardage",
            string.Create(
                CultureInfo.InvariantCulture,
                $$"""
                { "units": "in", "effort": "quick", "cushions": [{{cushion}}], "workroom": { "cuttingStep": "{{step}}" },
                  "fabrics": [{ "id": "m", "width": {{width}}, "shrinkage": { "width": 0.03 }, "sold": { "unit": "yd", "step": "1/8" },
                                "repeat": { "width": {{repeat}} } }] }
                """
            )
        );

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }
}
