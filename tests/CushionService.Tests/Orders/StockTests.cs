using CushionService.Contract;

namespace CushionService.Tests.Orders;

/// <summary>What a stock must say of itself, by its kind.</summary>
public sealed class StockTests
{
    [Theory]
    [InlineData("""{ "kind": "foam" }""", "/id required")]
    [InlineData("""{ "id": "a" }""", "/kind required")]
    [InlineData("""{ "id": "a b", "kind": "foam" }""", "/id bad-form")]
    [InlineData("""{ "id": "a", "kind": "fabric" }""", "/kind not-combinable")]
    [InlineData("""{ "id": "main", "kind": "foam" }""", "/id duplicate")]
    [InlineData("""{ "id": "a", "kind": "foam", "diameter": 1 }""", "/diameter not-applicable")]
    [InlineData("""{ "id": "a", "kind": "cord", "thickness": 1 }""", "/thickness not-applicable")]
    [InlineData("""{ "id": "a", "kind": "thread", "weight": 1 }""", "/weight not-applicable")]
    [InlineData("""{ "id": "a", "kind": "thread", "density": 20 }""", "/density not-applicable")]
    [InlineData("""{ "id": "a", "kind": "loose-fill", "firmness": 150 }""", "/firmness not-applicable")]
    [InlineData("""{ "id": "a", "kind": "foam", "supportFactor": 2 }""", "/firmness required")]
    [InlineData("""{ "id": "a", "kind": "foam", "coverage": 1 }""", "/coverage not-applicable")]
    [InlineData("""{ "id": "a", "kind": "slider", "length": 1 }""", "/length not-applicable")]
    [InlineData("""{ "id": "a", "kind": "button", "width": 1 }""", "/width not-applicable")]
    [InlineData("""{ "id": "a", "kind": "foam", "width": 24, "thickness": 1 }""", "/length required")]
    [InlineData("""{ "id": "a", "kind": "foam", "width": 24, "length": 72 }""", "/thickness required")]
    [InlineData("""{ "id": "a", "kind": "batting" }""", "/width required")]
    [InlineData("""{ "id": "a", "kind": "thread", "sold": { "unit": "each" } }""", "/length required")]
    [InlineData("""{ "id": "a", "kind": "loose-fill", "sold": { "unit": "each" } }""", "/weight required")]
    [InlineData("""{ "id": "a", "kind": "adhesive", "sold": { "unit": "sq-yd" }, "coverage": 1 }""", "/sold/unit not-combinable")]
    [InlineData("""{ "id": "a", "kind": "thread", "sold": { } }""", "/sold/unit required")]
    [InlineData("""{ "id": "a", "kind": "thread", "sold": { "unit": "lb" } }""", "/sold/unit not-combinable")]
    [InlineData("""{ "id": "a", "kind": "zipper", "length": 12, "sold": { "unit": "yd" } }""", "/sold/unit not-combinable")]
    [InlineData(
        """{ "id": "a", "kind": "foam", "width": 24, "length": 72, "thickness": 1, "sold": { "unit": "lb" } }""",
        "/sold/unit not-combinable"
    )]
    [InlineData("""{ "id": "a", "kind": "button", "sold": { "unit": "each", "step": 2.5 } }""", "/sold/step out-of-range 1..")]
    [InlineData("""{ "id": "a", "kind": "cord", "sold": { "unit": "yd", "step": 0 } }""", "/sold/step out-of-range 0.001..10000")]
    [InlineData("""{ "id": "a", "kind": "cord", "diameter": 121 }""", "/diameter out-of-range 0.03125..120")]
    [InlineData("""{ "id": "a", "kind": "form", "width": 20 }""", "/depth required")]
    [InlineData("""{ "id": "a", "kind": "form", "length": 20 }""", "/diameter required")]
    [InlineData("""{ "id": "a", "kind": "form", "diameter": 16, "width": 16, "depth": 16 }""", "/diameter not-combinable")]
    [InlineData("""{ "id": "a", "kind": "form", "density": 20 }""", "/density not-applicable")]
    [InlineData("""{ "id": "a", "kind": "form", "sold": { "unit": "lb" } }""", "/sold/unit not-combinable")]
    [InlineData("""{ "id": "a", "kind": "foam", "depth": 20 }""", "/depth not-applicable")]
    [InlineData("""{ "id": "a", "kind": "foam", "density": 1, "firmness": 150 }""", "/density out-of-range 2..500")]
    public void A_stock_says_what_its_kind_needs_and_nothing_else(string stock, string violation) =>
        Assert.Equal(
            [$"/stocks/0{violation}"],
            SampleOrder.Validate($$"""{ "/stocks": [{{stock}}] }""").Violations.Select(SampleOrder.Written)
        );

    [Fact]
    public void Every_kind_but_fabric_can_be_stocked()
    {
        foreach (string kind in Words<Engine.Specifications.Stocks.MaterialKind>.All.Except(["fabric"]))
        {
            string width = kind == "batting" ? ", \"width\": 48" : "";
            Assert.Empty(
                SampleOrder
                    .Validate($$"""{ "/stocks": [{ "id": "a", "kind": "{{kind}}"{{width}} }] }""")
                    .Violations.Select(SampleOrder.Written)
            );
        }
    }

    [Theory]
    [InlineData("""{ "id": "a", "kind": "foam", "density": 29 }""", "/stocks/0/firmness foam-half-described")]
    [InlineData("""{ "id": "a", "kind": "foam", "firmness": 156 }""", "/stocks/0/density foam-half-described")]
    public void Density_and_firmness_are_given_together(string stock, string warning) =>
        Assert.Equal([warning], SampleOrder.Validate($$"""{ "/stocks": [{{stock}}] }""").Warnings.Select(SampleOrder.Written));

    [Fact]
    public void A_stock_is_priced_by_the_unit_that_it_is_sold_by() =>
        Assert.Equal(
            ["/prices/0/per not-combinable", "/stocks/1/id duplicate"],
            SampleOrder
                .Validate(
                    """
                    { "/stocks": [{ "id": "thread", "kind": "thread", "length": "220 yd", "sold": { "unit": "each" } },
                      { "id": "thread", "kind": "foam" }] }
                    """
                )
                .Violations.Select(SampleOrder.Written)
        );

    /// <summary>A price may repeat how its stock is sold, and not contradict it.</summary>
    [Theory]
    [InlineData("""{ "unit": "yd", "step": 1 }""", "\"step\": 1")]
    [InlineData("""{ "unit": "yd" }""", "\"step\": \"1/8\"")]
    [InlineData("""{ "unit": "yd", "step": 1 }""", "\"step\": 0.125", "/prices/0/step not-combinable")]
    [InlineData("""{ "unit": "yd", "step": 1 }""", "\"minimum\": 8", "/prices/0/minimum not-combinable")]
    [InlineData("""{ "unit": "yd", "minimum": 8 }""", "\"minimum\": 8")]
    public void A_price_does_not_contradict_its_stock(string sold, string price, params string[] violations) =>
        Assert.Equal(
            violations,
            SampleOrder
                .Validate(
                    $$"""
                    { "/stocks": [{ "id": "thread", "kind": "thread", "sold": {{sold}} }],
                      "/prices": [{ "item": "thread", "amount": "0.02", "per": "yd", {{price}} }] }
                    """
                )
                .Violations.Select(SampleOrder.Written)
        );
}
