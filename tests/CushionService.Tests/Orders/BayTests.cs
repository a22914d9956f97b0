using System.Text.Json.Nodes;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;

namespace CushionService.Tests.Orders;

/// <summary>Bays: a cushion for each wall, and what is refused.</summary>
public sealed class BayTests
{
    private const string Window = """
        "id": "window", "label": "Window seat", "construction": "boxed", "walls": [30, 60, 30], "angles": [135, 135], "depth": 18,
        "thickness": 3, "boxing": { "joins": "corners" }, "closure": { "kind": "zipper", "side": "back" },
        "fabrics": { "top": "main" }
        """;

    [Fact]
    public void A_bay_is_made_as_a_cushion_for_each_wall()
    {
        PieceAnswer[] tops = [.. Pieces(Window).Where(piece => piece.Part == "top")];

        Assert.Equal(["window-1", "window-2", "window-3"], tops.Select(top => top.Cushion));
        // Backs of 29 3/4, 59 1/2 and 29 3/4 in. A square corner adds 1/2 in, an acute one of 67.5° s cot 33.75° = 0.74831 in, an obtuse
        // one less: the back's ends are the widest.
        Assert.Equal([30.9983, 60.9966, 30.9983], tops.Select(top => Math.Round(top.Width, 4)));
        Assert.All(tops, top => Assert.Equal(19, top.Length));
        Assert.All(tops, top => Assert.Equal(4, top.Points!.Count));
        // The left seat and the right one are each other's mirror, so neither is cut as the other.
        Assert.Equal(
            tops[0].Points!.Select(point => Math.Round(tops[0].Width - point.X, 6)).Order(),
            tops[2].Points!.Select(point => Math.Round(point.X, 6)).Order()
        );
        Assert.NotEqual(tops[0].Points, tops[2].Points);
    }

    [Fact]
    public void Fronts_are_cut_to_the_mitres()
    {
        // 60 − 2 × 1/4 − 2 × 18 cot 67.5° = 44.58831, and 30 − 1/4 − 18 cot 67.5° = 22.29416; each with 1/2 in seams, up to 1/8 in.
        Assert.Equal([23.375, 45.625, 23.375], Pieces(Window).Where(piece => piece.Part == "front").Select(piece => piece.Width));
        // Both mitres of a corner: 18 / sin 67.5° = 19.48306; the ends of the bay are square, 18.
        Assert.Equal(
            [
                "window-1/left 19",
                "window-1/right 20.5",
                "window-2/left 20.5",
                "window-2/right 20.5",
                "window-3/left 20.5",
                "window-3/right 19",
            ],
            Pieces(Window)
                .Where(piece => piece.Part is "left" or "right")
                .Select(piece => FormattableString.Invariant($"{piece.Id} {piece.Width}"))
                .Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [InlineData(""" "angles": [135] """, "/bays/0/angles out-of-range 2..2")]
    [InlineData(""" "angles": [135, 59] """, "/bays/0/angles/1 out-of-range 60..179")]
    [InlineData(""" "angles": [180, 135] """, "/bays/0/angles/0 out-of-range 60..179")]
    [InlineData(""" "walls": [60] """, "/bays/0/walls out-of-range 2..7")]
    [InlineData(""" "walls": [30, 1, 30] """, "/bays/0/walls/1 out-of-range 2..240")]
    [InlineData(""" "walls": [30, "wide", 30] """, "/bays/0/walls/1 not-a-length")]
    [InlineData(""" "walls": null """, "/bays/0/walls required")]
    [InlineData(""" "walls": [30, 16, 30] """, "/bays/0/walls/1 out-of-range 16.411688267716535..")]
    [InlineData(""" "walls": [90, 50, 44, 60], "angles": [90, 90, 90] """, "/bays/0/walls not-a-shape")]
    [InlineData(""" "bulk": 3 """, "/bays/0/bulk out-of-range 0..2")]
    [InlineData(""" "depth": null """, "/bays/0/depth required")]
    [InlineData(""" "thickness": 30 """, "/bays/0/thickness out-of-range 0.25..24")]
    [InlineData(""" "closure": null """, "/bays/0/closure required")]
    [InlineData(""" "fabrics": { "top": "silk" } """, "/bays/0/fabrics/top unknown-fabric")]
    [InlineData(""" "construction": "waterfall" """, "/bays/0/construction not-combinable")]
    [InlineData(""" "quantity": 400 """, " too-many-pieces ..10000")]
    [InlineData(""" "fabrics": { "top": "trim" }, "walls": [30, 120, 30], "depth": 60 """, "/bays/0 wider-than-fabric")]
    public void What_makes_no_bay(string changes, string violation) =>
        Assert.Equal([violation], Validate(Changed(changes)).Violations.Select(SampleOrder.Written).Distinct());

    [Fact]
    public void A_bay_takes_the_ids_of_its_cushions()
    {
        ValidationAnswer answer = SampleOrder.Validate(
            $$"""
            { "/cushions/0/id": "window-2", "/bays": [{ {{Window}} }, { {{Window.Replace(
                "\"window\"",
                "\"window-2\"",
                StringComparison.Ordinal
            )}} }] }
            """
        );

        Assert.Equal(["/bays/0/id duplicate"], answer.Violations.Select(SampleOrder.Written));
    }

    [Fact]
    public void A_row_may_name_the_seats_of_a_bay()
    {
        ValidationAnswer answer = SampleOrder.Validate(
            $$"""{ "/bays": [{ {{Window}} }], "/rows": [{ "id": "wall", "cushions": ["seat", "window-1", "window-4"] }] }"""
        );

        Assert.Equal(["/rows/0/cushions/2 unknown-cushion"], answer.Violations.Select(SampleOrder.Written));
    }

    private static string Changed(string changes)
    {
        JsonObject bay = JsonNode.Parse($$"""{ {{Window}} }""")!.AsObject();
        foreach ((string name, JsonNode? value) in JsonNode.Parse($$"""{ {{changes}} }""")!.AsObject())
        {
            bay[name] = value?.DeepClone();
        }

        return bay.ToJsonString();
    }

    private static ValidationAnswer Validate(string bay) => SampleOrder.Validate($$"""{ "/bays": [{{bay}}] }""");

    private static IReadOnlyList<PieceAnswer> Pieces(string bay)
    {
        Order order = SampleOrder.Changed($$"""{ "/cushions": [], "/fabrics/0/width": 118, "/bays": [{ {{bay}} }] }""");
        return new OrderDesk().Handle(new(order, []), Purposes.Pieces, CancellationToken.None).Answer!.Pieces;
    }
}
