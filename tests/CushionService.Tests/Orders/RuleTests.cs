namespace CushionService.Tests.Orders;

/// <summary>One order for each rule, broken in that way alone.</summary>
public sealed class RuleTests
{
    [Theory]
    [InlineData("""{ "/cushions/0/id": "a b" }""", "/cushions/0/id bad-form")]
    [InlineData("""{ "/currency": "usd" }""", "/currency bad-form")]
    [InlineData("""{ "/fabrics/0/price/amount": "-1" }""", "/fabrics/0/price/amount bad-form")]
    [InlineData("""{ "/fabrics/0/price/amount": "1.1234567" }""", "/fabrics/0/price/amount bad-form")]
    [InlineData("""{ "/cushions/0/fill/stock": "" }""", "/cushions/0/fill/stock bad-form")]
    [InlineData("""{ "/cushions/0/outline/width": "wide" }""", "/cushions/0/outline/width not-a-length")]
    [InlineData("""{ "/fabrics/0/sold/step": "1/0" }""", "/fabrics/0/sold/step not-a-length")]
    public void The_form_of_a_value(string changes, string violation) => Breaks(changes, violation);

    [Theory]
    [InlineData("""{ "/cushions/1/id": "seat" }""", "/cushions/1/id duplicate")]
    [InlineData("""{ "/pieces/1": { "id": "runner", "fabric": "main", "width": 1, "length": 1 } }""", "/pieces/1/id duplicate")]
    [InlineData("""{ "/fabrics/2": { "id": "trim", "width": 45, "sold": { "unit": "m", "step": 0.1 } } }""", "/fabrics/2/id duplicate")]
    [InlineData("""{ "/prices/1": { "item": "thread", "amount": "1", "per": "yd" } }""", "/prices/1/item duplicate")]
    [InlineData("""{ "/prices/1": { "item": "trim", "amount": "1", "per": "m" } }""", "/prices/1/item duplicate")]
    [InlineData("""{ "/cushions/0/fabrics/top": "velvet" }""", "/cushions/0/fabrics/top unknown-fabric")]
    [InlineData("""{ "/cushions/0/fabrics/sides": "velvet" }""", "/cushions/0/fabrics/sides unknown-fabric")]
    [InlineData("""{ "/cushions/0/fabrics/bottom": "velvet" }""", "/cushions/0/fabrics/bottom unknown-fabric")]
    [InlineData("""{ "/cushions/0/handle/fabric": "velvet" }""", "/cushions/0/handle/fabric unknown-fabric")]
    [InlineData("""{ "/pieces/0/fabric": "velvet" }""", "/pieces/0/fabric unknown-fabric")]
    public void Names_are_distinct_and_known(string changes, string violation) => Breaks(changes, violation);

    [Theory]
    [InlineData("""{ "/cushions/1/thickness": 3 }""", "/cushions/1/thickness not-applicable")]
    [InlineData("""{ "/cushions/1/boxing": { "joins": "corners" } }""", "/cushions/1/boxing not-applicable")]
    [InlineData("""{ "/cushions/0/closure/return": 3 }""", "/cushions/0/closure/return not-applicable")]
    [InlineData("""{ "/cushions/0/closure/turnUnder": 1 }""", "/cushions/0/closure/turnUnder not-applicable")]
    [InlineData("""{ "/cushions/2/closure/fold": 1 }""", "/cushions/2/closure/fold not-applicable")]
    [InlineData("""{ "/cushions/0/closure/zipperSize": 5 }""", "/cushions/0/closure/zipperSize not-applicable")]
    [InlineData("""{ "/cushions/0/closure/sliders": 2 }""", "/cushions/0/closure/sliders not-applicable")]
    [InlineData("""{ "/cushions/0/closure/zipperColour": "navy" }""", "/cushions/0/closure/zipperColour not-applicable")]
    [InlineData("""{ "/cushions/2/closure/zipperSize": 4 }""", "/cushions/2/closure/zipperSize out-of-range 3..10")]
    [InlineData("""{ "/cushions/2/closure/zipperSize": 12 }""", "/cushions/2/closure/zipperSize out-of-range 3..10")]
    [InlineData("""{ "/cushions/2/closure/sliders": 3 }""", "/cushions/2/closure/sliders out-of-range 1..2")]
    [InlineData("""{ "/cushions/2/closure/overlap": 1 }""", "/cushions/2/closure/overlap not-applicable")]
    [InlineData("""{ "/cushions/1/closure/tapeWidth": 1 }""", "/cushions/1/closure/tapeWidth not-applicable")]
    [InlineData("""{ "/cushions/1/closure/strips": "as-sides" }""", "/cushions/1/closure/strips not-applicable")]
    [InlineData("""{ "/cushions/0/closure/strips": "as-sides" }""", "/cushions/0/closure/overlap not-applicable")]
    [InlineData("""{ "/fabrics/0/brought": 90 }""", "/fabrics/0/brought not-applicable")]
    [InlineData("""{ "/fabrics/0/customerOwned": true }""", "/fabrics/0/price not-applicable")]
    [InlineData("""{ "/cushions/1/fill/oversize": 1 }""", "/cushions/1/fill/oversize not-applicable")]
    [InlineData("""{ "/cushions/0/fill/material": "feather" }""", "/cushions/0/fill/material not-applicable")]
    [InlineData("""{ "/cushions/0/fill/plumpness": 1 }""", "/cushions/0/fill/plumpness not-applicable")]
    [InlineData("""{ "/cushions/0/fill": { "kind": "none", "stock": "foam" } }""", "/cushions/0/fill/stock not-applicable")]
    public void A_field_is_given_only_where_it_means_something(string changes, string violation) => Breaks(changes, violation);

    [Theory]
    [InlineData("""{ "/fabrics/0/repeat/width": 55 }""", "/fabrics/0/repeat/width out-of-range ..54")]
    [InlineData(
        """{ "/fabrics/0/repeat/width": 27, "/fabrics/0/repeat/motif": { "x": 53.5 } }""",
        "/fabrics/0/repeat/motif/x out-of-range 0..53"
    )]
    public void A_repeat_is_no_wider_than_its_fabric_and_its_motif_lies_on_it(string changes, string violation) =>
        Breaks(changes, violation);

    [Theory]
    [InlineData("""{ "/cushions/1/closure": { "kind": "hook-and-loop", "side": "back" } }""", "/cushions/1/closure/side not-combinable")]
    [InlineData(
        """{ "/cushions/0/closure": { "kind": "envelope", "side": "back", "overlap": 2 } }""",
        "/cushions/0/closure/side not-combinable"
    )]
    [InlineData("""{ "/cushions/2/closure/side": "left" }""", "/cushions/2/closure/side not-combinable")]
    [InlineData(
        """{ "/cushions/1/handle": { "kind": "folded-strap", "width": 1, "length": 9, "span": 8 } }""",
        "/cushions/1/handle/kind not-combinable"
    )]
    [InlineData("""{ "/cushions/0/handle/side": "bottom" }""", "/cushions/0/handle/side not-combinable")]
    [InlineData("""{ "/cushions/0/handle/side": "back" }""", "/cushions/0/handle/side not-combinable")]
    [InlineData("""{ "/cushions/1/fill": { "kind": "foam" } }""", "/cushions/1/fill/kind not-combinable")]
    [InlineData("""{ "/rows": [{ "id": "bay", "cushions": ["nobody"] }] }""", "/rows/0/cushions/0 unknown-cushion")]
    [InlineData(
        """
            { "/cushions/1/outline": { "kind": "circle", "diameter": 20 }, "/cushions/1/closure": { "kind": "hand-sewn" },
              "/cushions/1/tufts": { "rows": 1, "columns": 1, "buttonDiameter": 3 },
              "/cushions/2/tufts": { "rows": 1, "columns": 24, "buttonDiameter": 2 } }
            """,
        "/cushions/2/tufts tufts-too-close"
    )]
    [InlineData(
        """
            { "/cushions/1/outline/width": 4, "/cushions/1/closure": { "kind": "buttons", "side": "bottom", "buttonDiameter": 3 } }
            """,
        "/cushions/1/closure/buttonDiameter out-of-range"
    )]
    [InlineData(
        """
            { "/cushions/2/outline": { "kind": "circle", "diameter": 20 }, "/cushions/2/boxing": null,
              "/cushions/2/closure": { "kind": "zipper" }, "/cushions/2/pocket": { "width": 3, "height": 2 } }
            """,
        "/cushions/2/pocket/side not-combinable"
    )]
    [InlineData("""{ "/rows": [{ "id": "bay", "cushions": ["bench", "bench"] }] }""", "/rows/0/cushions/1 duplicate")]
    [InlineData(
        """{ "/cushions/2/quantity": 2, "/rows": [{ "id": "wall", "cushions": ["seat", "bench"], "print": "continuous" }] }""",
        "/rows/0/cushions/1 not-combinable"
    )]
    [InlineData(
        """{ "/cushions/2/match": { "faces": "free" }, "/rows": [{ "id": "wall", "cushions": ["bench"], "print": "continuous" }] }""",
        "/rows/0/cushions/0 not-combinable"
    )]
    [InlineData("""{ "/rows": [{ "id": "wall", "cushions": ["bench"], "follows": "seats" }] }""", "/rows/0/follows not-applicable")]
    [InlineData(
        """{ "/rows": [{ "id": "wall", "cushions": ["bench"], "print": "continuous", "follows": "wall" }] }""",
        "/rows/0/follows not-combinable"
    )]
    [InlineData("""{ "/fabrics/0/price/per": "m" }""", "/fabrics/0/price/per not-combinable")]
    [InlineData("""{ "/fabrics/1/sold/unit": "each" }""", "/fabrics/1/sold/unit not-combinable")]
    public void What_cannot_be_combined(string changes, string violation) => Breaks(changes, violation);

    [Theory]
    [InlineData("""{ "/cushions/2/outline/depth": 3 }""", "/cushions/2/closure/return out-of-range 0..3")]
    [InlineData(
        """{ "/cushions/1/closure": { "kind": "zipper", "side": "back" }, "/cushions/1/outline/width": 4 }""",
        "/cushions/1/closure/side side-too-short"
    )]
    [InlineData("""{ "/cushions/0/closure/overlap": "7/8" }""", "/cushions/0/closure/overlap overlap-too-narrow 1..3")]
    [InlineData("""{ "/cushions/0/closure/overlap": 3.5 }""", "/cushions/0/closure/overlap overlap-too-deep ..3")]
    [InlineData(
        """{ "/cushions/1/closure/overlap": 10, "/cushions/1/outline/depth": 9 }""",
        "/cushions/1/closure/overlap overlap-too-deep ..9"
    )]
    [InlineData("""{ "/cushions/0/closure/fold": 1.5, "/cushions/0/thickness": 1.75 }""", "/cushions/0/closure/fold hem-too-deep ..1.5")]
    [InlineData("""{ "/cushions/0/handle/width": 3.5 }""", "/cushions/0/handle/width out-of-range ..3")]
    [InlineData("""{ "/cushions/0/handle/span": 10.5 }""", "/cushions/0/handle/span out-of-range ..10.5")]
    [InlineData("""{ "/cushions/0/handle/span": 23, "/cushions/0/handle/length": 24 }""", "/cushions/0/handle/span out-of-range ..22")]
    [InlineData(
        """{ "/cushions/2/handle": { "kind": "folded-strap", "side": "left", "width": 1, "length": 17, "span": 16 } }""",
        "/cushions/2/handle/span out-of-range ..15"
    )]
    [InlineData(
        """
            { "/cushions/2/outline": { "kind": "regular-polygon", "sideCount": 12, "sideLength": 5.5 },
              "/cushions/2/boxing": { "joins": "back" },
              "/cushions/2/closure": { "kind": "zipper", "side": "back" },
              "/cushions/2/handle": { "kind": "folded-strap", "side": "front", "width": 1, "length": 9, "span": 8 } }
            """,
        "/cushions/2/handle/span out-of-range ..5.5"
    )]
    [InlineData(
        """
            { "/cushions/2/outline": { "kind": "regular-polygon", "sideCount": 12, "sideLength": 5.5 },
              "/cushions/2/boxing": { "joins": "corners" },
              "/cushions/2/closure": { "kind": "zipper", "side": "back" },
              "/cushions/2/handle": { "kind": "folded-strap", "side": "right", "width": 1, "length": 9, "span": 8 } }
            """,
        "/cushions/2/handle/span out-of-range ..5.5"
    )]
    [InlineData(
        """{ "/fabrics/1/width": 4, "/fabrics/1/selvedge": 1.75, "/cushions/1/fabrics/top": "main" }""",
        "/fabrics/1/selvedge out-of-range ..1.5"
    )]
    public void What_sizes_allow(string changes, string violation) => Breaks(changes, violation);

    [Theory]
    [InlineData("""{ "/cushions/1/outline/width": 60, "/cushions/1/outline/depth": 60 }""", "/cushions/1 wider-than-fabric")]
    [InlineData("""{ "/pieces/0/width": 60, "/pieces/0/rotation": "half-turn" }""", "/pieces/0 wider-than-fabric")]
    [InlineData("""{ "/cushions/0/quantity": 1000 }""", " too-many-pieces ..10000")]
    public void What_cannot_be_made(string changes, string violation) =>
        Assert.Contains(violation, SampleOrder.Validate(changes).Violations.Select(SampleOrder.Written));

    [Fact]
    public void A_piece_too_wide_is_named_with_its_shortfall()
    {
        CushionService.Contract.Answers.ViolationAnswer violation = SampleOrder
            .Validate("""{ "/pieces/0/width": 60 }""")
            .Violations.Single();

        Assert.Equal(
            "Piece runner is 60 in wide at its narrowest allowed turn; "
                + "the usable width of main is about 51 15/16 in, about 8 1/16 in too little. "
                + "Choose a wider fabric, or make the piece smaller.",
            violation.Detail
        );
    }

    [Theory]
    [InlineData("reference", 100)]
    [InlineData("cushions/0/label", 200)]
    [InlineData("fabrics/0/label", 200)]
    public void A_name_for_people_has_an_end(string field, int longest)
    {
        Breaks($$"""{ "/{{field}}": "{{new string('x', longest + 1)}}" }""", $"/{field} too-long ..{longest}");
        Assert.Empty(SampleOrder.Validate($$"""{ "/{{field}}": "{{new string('x', longest)}}" }""").Violations);
    }

    [Fact]
    public void All_problems_are_reported_at_once_in_the_order_of_their_pointers() =>
        Assert.Equal(
            [
                "/cushions/0/thickness out-of-range 0.25..24",
                "/cushions/1/closure required",
                "/cushions/2/fabrics/top unknown-fabric",
                "/fabrics/1/id duplicate",
                "/fabrics/1/sold/step required",
                "/pieces/0/width not-a-length",
                "/prices/0/amount bad-form",
                "/workroom/threadRatio out-of-range 1..30",
            ],
            SampleOrder
                .Validate(
                    """
                    {
                      "/cushions/0/thickness": 25, "/cushions/1/closure": null, "/cushions/2/fabrics/top": "velvet",
                        "/cushions/1/fabrics/top": "main",
                      "/fabrics/1/id": "main", "/fabrics/1/sold/step": null, "/pieces/0/width": "wide", "/prices/0/amount": "free",
                        "/workroom/threadRatio": 0
                    }
                    """
                )
                .Violations.Select(SampleOrder.Written)
        );

    private static void Breaks(string changes, string violation) =>
        Assert.Equal([violation], SampleOrder.Validate(changes).Violations.Select(SampleOrder.Written));
}
