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
