using System.Net;
using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;
using Grpc.Core;

namespace CushionService.Tests.BothDoors;

/// <summary>Covers of many parts are quoted whole: a sentence that names them all is no deeper than one that names two.</summary>
public sealed class LongOrderTests(RunningService service) : IClassFixture<RunningService>
{
    [Theory]
    [InlineData("en", "Join wall-1 to wall-2 to wall-3", " to wall-24 into a loop, right sides together (24 joins")]
    [InlineData("de", "Rechts auf rechts zum Ring schließen: Wandteil 1 – Wandteil 2", " – Wandteil 24 (24 Ansatznähte")]
    [InlineData("fr", "Assembler en anneau, dans cet ordre, ", "(24 jonctions")]
    [InlineData("es", "Unir en aro, en este orden, ", "(24 uniones")]
    public async Task A_pouf_of_24_gores_is_quoted_in_every_language(string language, string begins, string goesOn)
    {
        JsonObject quote = await QuoteAsync(
            """
            { "units": "in", "effort": "quick",
              "cushions": [ { "id": "pouf", "construction": "pouf", "outline": { "kind": "circle", "diameter": 40 }, "thickness": 16,
                "gores": 24, "closure": { "kind": "zipper", "side": "bottom" }, "fabrics": { "top": "main" } } ],
              "fabrics": [ { "id": "main", "width": 54, "sold": { "unit": "yd", "step": "1/8" } } ] }
            """,
            language
        );

        Assert.Contains(
            quote["steps"]!.AsArray().Select(step => step!["text"]!.GetValue<string>()),
            text => text.Contains(begins, StringComparison.Ordinal) && text.Contains(goesOn, StringComparison.Ordinal)
        );
    }

    // The largest box on the narrowest fabric that holds its boxing: 960 in of loop in pieces of 19 in.
    [Fact]
    public async Task The_largest_box_on_a_narrow_fabric_is_quoted() =>
        Assert.NotEmpty(
            (
                await QuoteAsync(
                    """
                    { "units": "in", "effort": "quick",
                      "cushions": [ { "id": "floor", "construction": "boxed",
                        "outline": { "kind": "rectangle", "width": 240, "depth": 240 }, "thickness": 12, "faceJoins": "allow",
                        "boxing": { "joins": "back" }, "closure": { "kind": "zipper", "side": "back" },
                        "fabrics": { "top": "main" } } ],
                      "fabrics": [ { "id": "main", "width": 20, "sold": { "unit": "yd", "step": "1/8" } } ] }
                    """,
                    "en"
                )
            )["steps"]!.AsArray()
        );

    private async Task<JsonObject> QuoteAsync(string order, string language)
    {
        using HttpResponseMessage response = await service.PostInAsync("quotes", order, language);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        JsonObject rest = await response.JsonAsync();
        (StatusCode status, JsonObject grpc) = await SecondDoor.CallAsync(service, "quotes", JsonNode.Parse(order)!.AsObject(), language);

        Assert.Equal(StatusCode.OK, status);
        Assert.True(JsonNode.DeepEquals(Wire.Plain(rest), grpc), $"REST: {rest}\ngRPC: {grpc}");
        return rest;
    }
}
