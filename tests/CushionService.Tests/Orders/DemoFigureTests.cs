using System.Text.Json.Nodes;
using CushionService.Tests.Orders.Covers;

namespace CushionService.Tests.Orders;

/// <summary>The figures of the demonstrations' edges, openings, handles and channels, carried by hand (follow from the arithmetic beside
/// each; what is customary is common practice, no source). Inches, seams of 1/2.</summary>
public sealed class DemoFigureTests
{
    private static readonly Dictionary<string, JsonObject> Answers = new[]
    {
        "cafe-edges",
        "every-construction",
        "every-outline",
    }.ToDictionary(
        name => name,
        name =>
            QuotedCover
                .Of(JsonNode.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Demo", $"{name}.json")))!.AsObject())
                .Answer
    );

    // Faces 18 + 1. A strip folded over 1/8, w = 2 × 1/8 + 2 × 1/2 = 1 1/4; loop 4 × 18, 2 to close and an end of 1 1/4 = 75 1/4, from
    // 54 in of fabric: 2 strips, each 75 1/4 / 2 + 1 1/4 = 38 7/8 (the safe form of a join on the slant).
    [Fact]
    public void Flat_piping_round_a_pillow()
    {
        Assert.Equal("top 19 × 19; bottom 19 × 19; flat-piping 38.875 × 1.25", CutList("cafe-edges", "piped"));
        // Two strips one above the other, 2 1/2 in: 0.0635 m × 1.3716 m × 280 g/m² = 24.4 g, 0.054 lb, up to 1/8 lb at 9.00: 1.125, up.
        JsonNode line = Answers["cafe-edges"]["cost"]!["lines"]!.AsArray().Single(one => one!["item"]!.GetValue<string>() == "contrast")!;
        Assert.Equal(
            (0.125, "lb", "1.13"),
            (line["quantity"]!.GetValue<double>(), line["unit"]!.GetValue<string>(), line["amount"]!.GetValue<string>())
        );
    }

    // Zipper 14 + 16 + 14 = 44, cut 45 by 3/2 + 3/4 + 1/2; what is left of the loop, 60 − 44, is the front. Lip cord round both faces:
    // 2 × (60 + 2) = 124 in, 3.44 yd, up to 3 1/2. It has two sliders.
    [Fact]
    public void A_zipper_round_three_sides_and_lip_cord()
    {
        Assert.Equal(
            "top 17 × 15; bottom 17 × 15; zipper-upper 45 × 2.75; zipper-lower 45 × 2.75; boxing 17 × 4",
            CutList("cafe-edges", "corded")
        );
        Assert.Equal(3.5, Quantity("cafe-edges", "lip-cord"));
        // One for each of four other zippers.
        Assert.Equal(6, Quantity("cafe-edges", "slider"));
        // Pillow 18 less 1 1/2 at each end and 1/2 beyond the stop: 15 1/2; 45; half of π × 14 and 1: 23; 25; 21. 129 1/2 in.
        Assert.Equal(3.625, Quantity("cafe-edges", "zipper"));
    }

    // π × 14 = 43.98, up to 44, and 2 to close: 46 in, 1.28 yd, up to 1 3/8.
    [Fact]
    public void Gimp_round_one_face_of_a_stool() => Assert.Equal(1.375, Quantity("cafe-edges", "gimp"));

    // P = 2 (18 + √(4² + 14²)) = 65.12. A corner of angle a rounded by 1 takes 2 cot(a/2) and gives π − a: 74.05° and 105.95°, each
    // twice, take 4 (1.3254 + 0.7545) = 8.32 and give 2π: 63.08, up to 63 1/8. With 2 to close 65 1/8 in, 1.81 yd, up to 1 7/8.
    [Fact]
    public void Fringe_round_a_kite() => Assert.Equal(1.875, Quantity("every-outline", "fringe"));

    // Two rows along 2 (40 + 18) = 116 round both faces, 464 in, and two handles: each 9 long edge-stitched along both sides, and at each
    // end a box-X of 1 × 1, 4 + 2 √2: 2 × (18 + 13.66) = 63.3; beside the same bench without them.
    [Fact]
    public void Topstitching_round_a_bench()
    {
        string thread = Material("every-construction", "thread")["because"]!.GetValue<string>();
        Assert.Contains("Bench with channels: 408 in of stitching", thread, StringComparison.Ordinal);
        Assert.Contains("Bench with flat channels: 936 in of stitching", thread, StringComparison.Ordinal);
        Assert.InRange(936 - 408 - 464, 63, 65);
        Assert.Equal(
            2,
            Steps("every-construction").Count(step => step.Contains("topstitch them down, 2 rows, 1/4 in", StringComparison.Ordinal))
        );
    }

    // Flaps from the short sides: (20 + 5)/2 + 1/2 + 2 × 1/2 = 14 across, 14 + 1 along. Sewn twice all round, 2 (20 + 14) = 68 each, and
    // both hems, 2 × (14 + 1) up to what is turned: nothing is overcast, for the seam encloses its edges.
    [Fact]
    public void A_slip_with_French_seams_and_flaps_from_its_short_sides()
    {
        Assert.Equal("top 21 × 15; bottom-left 14 × 15; bottom-right 14 × 15", CutList("cafe-edges", "slip"));
        string thread = Material("cafe-edges", "thread")["because"]!.GetValue<string>();
        Assert.Contains("French seams: 174 in of stitching;", thread, StringComparison.Ordinal);
    }

    // Wrap 2 × 20 + 4 = 44 by 24; sides 20 × 4; section 24 by 4/2 + 3/4 + 1/2 = 3 1/4; two straps 4 × 1 1/4 by 10 + 2 × 1/2. Their ends
    // are (21 − 9 1/4)/2 = 5 7/8 from each end of a side.
    [Fact]
    public void Two_handles_on_a_waterfall()
    {
        Assert.Equal(
            "main 25 × 45; right 21 × 5; left 21 × 5; zipper-upper 25 × 3.25; zipper-lower 25 × 3.25; handle 5 × 11",
            CutList("cafe-edges", "carried")
        );
        JsonObject[] pieces = [.. Pieces("cafe-edges", "carried")];
        Assert.Equal(2, pieces.Single(piece => Part(piece) == "handle")["quantity"]!.GetValue<int>());
        foreach (string side in (string[])["right", "left"])
        {
            Assert.Equal(
                [5.875, 15.125],
                pieces.Single(piece => Part(piece) == side)["marks"]!
                    .AsArray()
                    .Where(mark => mark!["kind"]!.GetValue<string>() == "handle-end")
                    .Select(mark => mark!["x"]!.GetValue<double>())
            );
        }
    }

    // 2 % drawn in both ways: 20.4 + 1 = 21.4, up to 21 1/2; 18.36 + 1 = 19.36, up to 19 3/8. Five channels across have four seams, at
    // fifths of 18.36: marks 1/2 + (19.375 − 19.36) / 2 + 3.672 k from the front of the cut top.
    [Fact]
    public void Channels_across_a_back_rest()
    {
        JsonObject top = Pieces("cafe-edges", "ribbed").First();
        Assert.Equal((21.5, 19.375), (top["width"]!.GetValue<double>(), top["length"]!.GetValue<double>()));
        JsonNode[] seams =
        [
            .. top["marks"]!.AsArray().Where(mark => mark!["kind"]!.GetValue<string>() == "stitch-line").Select(mark => mark!),
        ];
        Assert.Equal(4, seams.Length);
        Assert.Equal([4.18, 7.85, 11.52, 15.2], seams.Select(mark => Math.Round(mark["y"]!.GetValue<double>(), 2)).Order());
    }

    private static IEnumerable<JsonObject> Pieces(string demo, string cushion) =>
        Answers[demo]["pieces"]!
            .AsArray()
            .Select(piece => piece!.AsObject())
            .Where(piece => piece["cushion"]?.GetValue<string>() == cushion);

    private static string Part(JsonObject piece) => piece["part"]!.GetValue<string>();

    private static string CutList(string demo, string cushion) =>
        string.Join(
            "; ",
            Pieces(demo, cushion).Select(piece => FormattableString.Invariant($"{Part(piece)} {piece["width"]} × {piece["length"]}"))
        );

    private static JsonNode Material(string demo, string item) =>
        Answers[demo]["materials"]!.AsArray().Single(material => material!["item"]!.GetValue<string>() == item)!;

    private static double Quantity(string demo, string item) => Material(demo, item)["quantity"]!.GetValue<double>();

    private static IEnumerable<string> Steps(string demo) =>
        Answers[demo]["steps"]!.AsArray().Select(step => step!["text"]!.GetValue<string>());
}
