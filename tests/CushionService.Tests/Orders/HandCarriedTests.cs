using System.Text.Json.Nodes;
using CushionService.Tests.Orders.Covers;

namespace CushionService.Tests.Orders;

/// <summary>Four orders carried by hand from the specification to the buying list: two in inches, two in centimetres (follow from the
/// arithmetic beside each figure; common practice, no source, for what is customary).</summary>
public sealed class HandCarriedTests
{
    // Box 24 × 22 × 4, seams 1/2, the zipper at the back with returns of 3, on plain fabric 54 wide. Loop 2 (24 + 22) = 92; zipper
    // section 24 + 2 × 3 = 30, cut 31 by 4/2 + 3/4 + 1/2 = 3 1/4, twice. The boxing that is left, 92 − 30 = 62, is longer than 54 −
    // 1 = 53: joined 9 from the zipper's end, cut 54 and 10 by 5. Faces 25 × 23. Layout: no two of 54, 31 and 31 lie side by side,
    // nor a face beside one of them (25 + 31 = 56): 5 + 3 1/4 + 3 1/4, and 23 for the two faces side by side, 50 of 54 across; the
    // 10 × 5 lies beside a 31. 34 1/2 in, 1 yd, 20.00. Welt 2 × 92 + 2 × 2 to close = 188, and a strip's end of 1 1/2; straight
    // strips of 54 make 4 × 54 − 3 × 1 1/2: 4 strips of 1 1/2 wide, 6 in, 1/4 yd, 3.00. Cord 188 in = 5.22 yd, 5 1/4 yd at 0.80 =
    // 4.20. Chain 30 + 1 = 31 in, 7/8 yd at 2.40 = 2.10. Foam in layers of 1 and 3, and a crown 1 thick that ends 2 inside the edge
    // all round, 20 × 18: a sheet of each, 18.00 and 40.00. Glue on both faces of two joints, 2 × 24 × 22 + 2 × 20 × 18 = 1776 in²
    // = 1.3704 yd², up to 1.38, at 3.00 = 4.14. 20.00 + 3.00 + 18.00 + 40.00 + 4.14 + 2.10 + 4.20 = 91.44.
    [Fact]
    public void A_welted_box_in_inches()
    {
        JsonObject quote = Quote(
            """
            { "units": "in", "currency": "USD", "effort": "standard",
              "cushions": [ { "id": "box", "construction": "boxed", "outline": { "kind": "rectangle", "width": 24, "depth": 22 },
                "thickness": 4, "boxing": { "joins": "back" }, "closure": { "kind": "zipper" },
                "edging": { "kind": "welt", "cut": "crosswise", "fabric": "trim" }, "fabrics": { "top": "main" },
                "fill": { "kind": "foam", "layers": [ { "stock": "soft", "thickness": 1 }, { "stock": "firm", "thickness": 3 } ],
                  "crown": 1 } } ],
              "fabrics": [ { "id": "main", "width": 54, "shrinkage": { "length": 0, "width": 0 },
                  "sold": { "unit": "yd", "step": "1/8" }, "price": { "amount": "20.00", "per": "yd" } },
                { "id": "trim", "width": 54, "shrinkage": { "length": 0, "width": 0 }, "sold": { "unit": "yd", "step": "1/8" },
                  "price": { "amount": "12.00", "per": "yd" } } ],
              "stocks": [ { "id": "soft", "kind": "foam", "width": 24, "length": 72, "thickness": 1, "density": 24, "firmness": 70 },
                { "id": "firm", "kind": "foam", "width": 24, "length": 72, "thickness": 3, "density": 32, "firmness": 150 },
                { "id": "chain", "kind": "zipper", "sold": { "unit": "yd", "step": "1/8" } },
                { "id": "cord", "kind": "cord", "diameter": "5/32", "sold": { "unit": "yd", "step": "1/4" } },
                { "id": "glue", "kind": "adhesive", "sold": { "unit": "sq-yd", "step": "0.01" } } ],
              "prices": [ { "item": "soft", "amount": "18.00", "per": "each" }, { "item": "firm", "amount": "40.00", "per": "each" },
                { "item": "chain", "amount": "2.40", "per": "yd" }, { "item": "cord", "amount": "0.80", "per": "yd" },
                { "item": "glue", "amount": "3.00", "per": "sq-yd" } ] }
            """
        );

        Assert.Equal(
            "top 25 × 23; bottom 25 × 23; zipper-upper 31 × 3.25; zipper-lower 31 × 3.25; boxing-1 54 × 5; boxing-2 10 × 5",
            CutList(quote, "main")
        );
        Assert.Equal("main 34.5: 1; trim 6: 0.25", Yardage(quote));
        Assert.Equal("main 20.00; trim 3.00; soft 18.00; firm 40.00; glue 4.14; chain 2.10; cord 4.20; total 91.44", Money(quote));
        // A layer of 24 × 22 × 1 at 24 kg/m³, 528 in³ × 16.387 064 cm³: 0.2077 kg, 0.458 lb; firm (24 × 22 × 3 + 20 × 18) in³ at 32 kg/m³:
        // 1944 in³, 1.0194 kg, 2.247 lb.
        Assert.Equal(0.458, Weight(quote, "soft"));
        Assert.Equal(2.247, Weight(quote, "firm"));
    }

    // Two knife-edge pads 18 × 18 with an envelope: 18 in across takes an overlap of 4. Backs (18 + 4)/2 + 1/2 + 2 × 1/2 = 12 1/2,
    // faces 19. On 54 in two of 19 lie side by side: the tops 19, then four backs in two rows of 12 1/2: 19 + 25 = 44. Washed, 44 /
    // 0.9 = 48.89 in = 1.358 yd, up to 1 1/2 yd at 16.00 = 24.00. A form 2 in larger than the cover, twice at 7.50.
    [Fact]
    public void Two_pads_in_inches_on_fabric_that_shrinks()
    {
        JsonObject quote = Quote(
            """
            { "units": "in", "currency": "USD", "effort": "standard",
              "cushions": [ { "id": "pad", "quantity": 2, "construction": "knife-edge",
                "outline": { "kind": "rectangle", "width": 18, "depth": 18 }, "closure": { "kind": "envelope" },
                "fabrics": { "top": "main" }, "fill": { "kind": "form" } } ],
              "fabrics": [ { "id": "main", "width": 54, "shrinkage": { "length": 0.1, "width": 0 },
                "sold": { "unit": "yd", "step": "1/4" }, "price": { "amount": "16.00", "per": "yd" } } ],
              "stocks": [ { "id": "form-20", "kind": "form", "width": 20, "depth": 20 } ],
              "prices": [ { "item": "form-20", "amount": "7.50", "per": "each" } ] }
            """
        );

        Assert.Equal("top 19 × 19; bottom-front 19 × 12.5; bottom-back 19 × 12.5", CutList(quote, "main"));
        Assert.Equal("main 44: 1.5", Yardage(quote));
        Assert.Equal("main 24.00; form-20 15.00; total 39.00", Money(quote));
    }

    // Round box 40 × 8, seams 1.5. Discs 43. Half of π × 40 = 125.66 is the zipper's: 62.83 + 3 = 65.83, up to 65.9, by 8/2 + 2 +
    // 1.5 = 7.5, twice; the other half 65.9 by 11. On 140 cm the strips lie side by side, 7.5 and 11 high; discs side by side, 43:
    // 54 laid, 54 / 0.95 = 56.84 cm, 0.6 m at 24.00 = 14.40. Foam π × 20² × 8 = 10 053 cm³ at 30 kg/m³ = 0.3016 kg, up to 0.31 at
    // 9.00 = 2.79. Chain 65.9 cm, 0.7 m at 3.10 = 2.17.
    [Fact]
    public void A_round_box_in_centimetres()
    {
        JsonObject quote = Quote(
            """
            { "units": "cm", "currency": "EUR", "effort": "standard",
              "cushions": [ { "id": "round", "construction": "boxed", "outline": { "kind": "circle", "diameter": 40 }, "thickness": 8,
                "closure": { "kind": "zipper" }, "fabrics": { "top": "main" }, "fill": { "kind": "foam", "density": 30 } } ],
              "fabrics": [ { "id": "main", "width": 140, "shrinkage": { "length": 0.05, "width": 0 },
                "sold": { "unit": "m", "step": "0.1" }, "price": { "amount": "24.00", "per": "m" } } ],
              "prices": [ { "item": "foam", "amount": "9.00", "per": "kg" }, { "item": "zipper", "amount": "3.10", "per": "m" } ] }
            """
        );

        Assert.Equal("zipper-upper 65.9 × 7.5; zipper-lower 65.9 × 7.5; boxing 65.9 × 11", CutList(quote, "main", "top", "bottom"));
        Assert.Equal("main 54: 0.6", Yardage(quote));
        Assert.Equal(0.302, Weight(quote, "foam"));
        Assert.Equal("main 14.40; foam 2.79; zipper 2.17; total 19.36", Money(quote));
    }

    // Three rolls 20 × 60, seams 1.5. Body π × 20 + 3 = 65.83, up to 65.9, by 63; ends 23. On 140 cm two bodies lie side by side,
    // 63, and the third with six ends of 23 beside it, 74 cm across: three by two, 46 high. 126 cm, 1.3 m at 18.50 = 24.05. Fill 3
    // × π × 10² × 60 = 56 549 cm³, nine tenths of it at 20 kg/m³ = 1.018 kg, up to 1.02 at 6.00 = 6.12.
    [Fact]
    public void Three_rolls_in_centimetres()
    {
        JsonObject quote = Quote(
            """
            { "units": "cm", "currency": "EUR", "effort": "standard",
              "cushions": [ { "id": "roll", "quantity": 3, "construction": "bolster", "outline": { "kind": "circle", "diameter": 20 },
                "length": 60, "closure": { "kind": "hand-sewn" }, "fabrics": { "top": "main" },
                "fill": { "kind": "loose", "material": "polyester-fibre" } } ],
              "fabrics": [ { "id": "main", "width": 140, "sold": { "unit": "m", "step": "0.1" },
                "price": { "amount": "18.50", "per": "m" } } ],
              "prices": [ { "item": "polyester-fibre", "amount": "6.00", "per": "kg" } ] }
            """
        );

        Assert.Equal("body 65.9 × 63", CutList(quote, "main", "left-end", "right-end"));
        Assert.Equal("main 126: 1.3", Yardage(quote));
        Assert.Equal("main 24.05; polyester-fibre 6.12; total 30.17", Money(quote));
    }

    private static JsonObject Quote(string order) => QuotedCover.Of(JsonNode.Parse(order)!.AsObject()).Answer;

    private static IEnumerable<JsonObject> List(JsonNode record, string name) => record[name]!.AsArray().Select(one => one!.AsObject());

    // Templates of curves are cut on their line, not to a step: their sizes are in other tests.
    private static string CutList(JsonObject quote, string fabric, params string[] but) =>
        string.Join(
            "; ",
            List(quote, "pieces")
                .Where(piece => piece["fabric"]!.GetValue<string>() == fabric && !but.Contains(piece["part"]!.GetValue<string>()))
                .Select(piece => FormattableString.Invariant($"{piece["part"]} {piece["width"]} × {piece["length"]}"))
        );

    private static string Yardage(JsonObject quote) =>
        string.Join(
            "; ",
            List(quote, "yardage")
                .Select(line =>
                    FormattableString.Invariant(
                        $"{line["fabric"]} {Math.Round(line["layoutLength"]!.GetValue<double>(), 2)}: {line["soldLength"]}"
                    )
                )
        );

    private static double Weight(JsonObject quote, string item) =>
        List(quote, "materials").First(material => material["item"]!.GetValue<string>() == item)["weight"]!.GetValue<double>();

    private static string Money(JsonObject quote) =>
        string.Join(
            "; ",
            List(quote["cost"]!, "lines").Select(line => $"{line["item"]} {line["amount"]}").Append($"total {quote["cost"]!["total"]}")
        );
}
