using System.Text.Json.Nodes;
using CushionService.Tests.Orders.Covers;

namespace CushionService.Tests.Orders;

/// <summary>How far a zipper at the back runs on round the corners (common practice, no source).</summary>
public sealed class ReturnTests
{
    [Theory]
    [InlineData("""{ "kind": "u", "width": 50, "depth": 30, "notchWidth": 20, "notchDepth": 12 }""", null, 21)]
    [InlineData("""{ "kind": "rectangle", "width": 20, "depth": 18 }""", null, 27)]
    // 20 + 2 × 3 + 1: what is left of a side of 5 in keeps the join 2 in from its corner. On shorter sides it lies in their middle.
    [InlineData("""{ "kind": "rectangle", "width": 20, "depth": 5 }""", null, 27)]
    [InlineData("""{ "kind": "rectangle", "width": 20, "depth": 4 }""", null, 25)]
    [InlineData("""{ "kind": "rectangle", "width": 20, "depth": 2.5 }""", null, 23.5)]
    [InlineData("""{ "kind": "rectangle", "width": 20, "depth": 2 }""", null, 23)]
    [InlineData("""{ "kind": "rectangle", "width": 20, "depth": 4 }""", 3.5, 28)]
    public void A_zipper_stops_at_inside_corners_unless_the_order_says_otherwise(string outline, double? given, double cut)
    {
        JsonObject closure = new() { ["kind"] = "zipper", ["side"] = "back" };
        if (given is { } far)
        {
            closure["return"] = far;
        }

        QuotedCover cover = QuotedCover.Of(
            new JsonObject
            {
                ["units"] = "in",
                ["cushions"] = new JsonArray(
                    new JsonObject
                    {
                        ["id"] = "seat",
                        ["quantity"] = 1,
                        ["construction"] = "boxed",
                        ["outline"] = JsonNode.Parse(outline),
                        ["thickness"] = 4,
                        ["closure"] = closure,
                    }
                ),
                ["fabrics"] = new JsonArray(
                    new JsonObject
                    {
                        ["id"] = "main",
                        ["width"] = 54,
                        ["sold"] = new JsonObject { ["unit"] = "yd", ["step"] = "1/8" },
                    }
                ),
            }
        );

        JsonNode zipper = cover.Answer["pieces"]!.AsArray().Single(piece => piece!["id"]!.GetValue<string>() == "seat/zipper-upper")!;
        Assert.Equal(cut, zipper["width"]!.GetValue<double>(), 1e-9);
    }
}
