using CushionService.Contract.Answers;

namespace CushionService.Tests.Orders;

/// <summary>What a fill may say beside its stock, and a workroom of its stitch.</summary>
public sealed class FillTests
{
    private const string Stocks =
        """ "/stocks": [{ "id": "slab", "kind": "foam", "density": 30, "firmness": 150 }, { "id": "roll", "kind": "batting", "width":"""
        + """ 48 }] """;

    [Theory]
    [InlineData("""{ "kind": "foam", "stock": "foam-9" }""", "/stock unknown-stock")]
    [InlineData("""{ "kind": "foam", "stock": "roll" }""", "/stock unknown-stock")]
    [InlineData("""{ "kind": "foam", "stock": "slab", "density": 30 }""", "/density not-combinable")]
    [InlineData("""{ "kind": "foam", "wrap": { "stock": "slab" } }""", "/wrap/stock unknown-stock")]
    [InlineData("""{ "kind": "foam", "wrap": { "layers": 7 } }""", "/wrap/layers out-of-range 1..6")]
    [InlineData("""{ "kind": "loose", "wrap": { } }""", "/wrap not-applicable")]
    public void A_fill_keeps_to_the_stocks(string fill, string violation) =>
        Assert.Equal(
            [$"/cushions/0/fill{violation}"],
            SampleOrder.Validate($$"""{ {{Stocks}}, "/cushions/0/fill": {{fill}} }""").Violations.Select(SampleOrder.Written)
        );

    [Theory]
    [InlineData("""{ "kind": "form", "stock": "form-99" }""", "/stock unknown-stock")]
    [InlineData("""{ "kind": "form", "stock": "form-20", "width": 18 }""", "/width not-combinable")]
    [InlineData("""{ "kind": "form", "depth": 20 }""", "/width required")]
    [InlineData("""{ "kind": "form", "width": 1 }""", "/width out-of-range 2..120")]
    [InlineData("""{ "kind": "form", "density": 20 }""", "/density not-applicable")]
    [InlineData("""{ "kind": "form", "weight": 1 }""", "/weight not-applicable")]
    [InlineData("""{ "kind": "loose", "width": 20 }""", "/width not-applicable")]
    [InlineData("""{ "kind": "loose", "fullness": "plump", "plumpness": 1 }""", "/plumpness not-combinable")]
    [InlineData("""{ "kind": "loose", "fullness": "soft", "weight": 2 }""", "/fullness not-combinable")]
    [InlineData("""{ "kind": "loose", "plumpness": 0.7 }""", "/plumpness out-of-range 0.8..1.2")]
    [InlineData("""{ "kind": "loose", "weight": 0.1 }""", "/weight out-of-range 0.292..")]
    [InlineData("""{ "kind": "none", "fullness": "soft" }""", "/fullness not-applicable")]
    public void A_form_or_a_loose_fill_says_what_goes_into_the_pillow(string fill, string violation) =>
        Assert.Equal(
            [$"/cushions/1/fill{violation}"],
            SampleOrder
                .Validate(
                    $$"""{ "/stocks": [{ "id": "form-20", "kind": "form", "width": 20, "depth": 20 }], "/cushions/1/fill": {{fill}} }"""
                )
                .Violations.Select(SampleOrder.Written)
        );

    // The sample is 3 in thick. Soft over firm is the rule; a firm core between soft layers is to be turned over (common practice, no
    // source).
    [Theory]
    [InlineData("soft 1, firm 2", "")]
    [InlineData("firm 2, soft 1", "/cushions/0/fill/layers/1 firm-above-soft")]
    [InlineData("soft 1, firm 1, soft 1", "")]
    [InlineData("middle 1, firm 1, soft 1", "/cushions/0/fill/layers/2 firm-above-soft")]
    [InlineData("soft 1, middle 1, firm 1", "")]
    public void Firm_foam_on_softer_foam_is_named_unless_soft_foam_lies_on_it(string layers, string warning)
    {
        string written = string.Join(
            ", ",
            layers.Split(", ").Select(layer => $$"""{ "stock": "{{layer.Split(' ')[0]}}", "thickness": {{layer.Split(' ')[1]}} }""")
        );
        ValidationAnswer answer = SampleOrder.Validate(
            $$"""
            { "/stocks": [{ "id": "soft", "kind": "foam", "firmness": 80 }, { "id": "middle", "kind": "foam", "firmness": 120 },
                { "id": "firm", "kind": "foam", "firmness": 180 }],
              "/cushions/0/fill": { "kind": "foam", "layers": [{{written}}] } }
            """
        );

        Assert.Empty(answer.Violations);
        Assert.Equal(
            warning,
            string.Join(' ', answer.Warnings.Where(one => one.Code == "firm-above-soft").Select(one => $"{one.Pointer} {one.Code}"))
        );
    }

    [Theory]
    [InlineData("""{ "/cushions/0/fill": { "kind": "foam", "fullness": "plump" } }""", "/cushions/0/fill/fullness not-applicable")]
    [InlineData("""{ "/cushions/0/fill": { "kind": "foam", "weight": 1 } }""", "/cushions/0/fill/weight not-applicable")]
    [InlineData(
        """
            { "/cushions/1/outline": { "kind": "oval", "width": 18, "depth": 12 }, "/cushions/1/closure": { "kind": "hand-sewn" },
              "/cushions/1/fill": { "kind": "form" } }
            """,
        "/cushions/1/fill/kind not-combinable"
    )]
    public void What_a_fill_does_not_take(string changes, string violation) =>
        Assert.Equal([violation], SampleOrder.Validate(changes).Violations.Select(SampleOrder.Written));

    [Theory]
    [InlineData("""{ "kind": "form" }""", "[]", "")]
    [InlineData("""{ "kind": "form", "width": 20 }""", """[{ "id": "a", "kind": "form", "width": 18, "depth": 18 }]""", " not-stocked")]
    [InlineData("""{ "kind": "form" }""", """[{ "id": "a", "kind": "form", "width": 16, "depth": 16 }]""", " not-stocked")]
    [InlineData("""{ "kind": "form" }""", """[{ "id": "a", "kind": "form", "width": 21, "depth": 21 }]""", " form-size")]
    [InlineData("""{ "kind": "form", "stock": "a" }""", """[{ "id": "a", "kind": "form", "width": 16, "depth": 16 }]""", " form-size")]
    [InlineData("""{ "kind": "form", "stock": "a" }""", """[{ "id": "a", "kind": "form", "diameter": 20 }]""", " form-size")]
    [InlineData("""{ "kind": "form", "width": 18 }""", "[]", " form-size")]
    public void A_form_that_does_not_fit_its_cover_is_warned_of(string fill, string stocks, string warning) =>
        Assert.Equal(
            warning.Length == 0 ? [] : [$"/cushions/1/fill{warning}"],
            SampleOrder.Validate($$"""{ "/stocks": {{stocks}}, "/cushions/1/fill": {{fill}} }""").Warnings.Select(SampleOrder.Written)
        );

    [Theory]
    [InlineData("""{ "type": "lockstitch" }""", "/thickness required")]
    [InlineData("""{ "thickness": 0.1 }""", "/type required")]
    [InlineData("""{ "type": "lockstitch", "thickness": 0.1, "bight": "1/4" }""", "/bight not-applicable")]
    [InlineData("""{ "type": "overedge", "thickness": 2 }""", "/thickness out-of-range 0.001..1")]
    public void A_stitch_is_given_with_its_thickness(string stitch, string violation) =>
        Assert.Equal(
            [$"/workroom/stitch{violation}"],
            SampleOrder.Validate($$"""{ "/workroom/stitch": {{stitch}} }""").Violations.Select(SampleOrder.Written)
        );

    [Fact]
    public void Foam_that_no_sheet_holds_is_glued_from_parts()
    {
        const string Sheets =
            """ "/stocks": [{ "id": "sheet", "kind": "foam", "width": 21, "length": 72, "thickness": 3, "density": 30, "firmness":"""
            + """ 150 }] """;

        // 22 × 20 of the cover lies on 21 × 72 turned; with a depth of 21 1/4 it does not.
        Assert.Empty(SampleOrder.Validate($$"""{ {{Sheets}}, "/cushions/0/fill": { "kind": "foam", "stock": "sheet" } }""").Violations);
        Assert.Equal(
            ["/cushions/0/fill/stock foam-joined"],
            SampleOrder
                .Validate(
                    $$"""{ {{Sheets}}, "/cushions/0/outline/depth": "21 1/4", "/cushions/0/fill": { "kind": "foam", "stock": "sheet" } }"""
                )
                .Warnings.Select(SampleOrder.Written)
        );
    }

    [Fact]
    public void A_wrap_fills_the_cover_out_by_itself()
    {
        const string Wrapped = """ "/cushions/0/fill": { "kind": "foam", "oversize": "1/4", "wrap": { } } """;
        ValidationAnswer answer = SampleOrder.Validate($$"""{ {{Wrapped}} }""");

        Assert.True(answer.Valid);
        Assert.Equal(["/cushions/0/fill/oversize foam-too-large"], answer.Warnings.Select(SampleOrder.Written));
    }
}
