namespace CushionService.Tests.Orders;

/// <summary>The rules of prices and costing in an order, each broken alone.</summary>
public sealed class CostingRuleTests
{
    [Theory]
    [InlineData("""{ "/costing": { "markup": 1, "margin": 0.5 } }""", "/costing/margin not-combinable")]
    [InlineData("""{ "/costing": { "margin": 1 } }""", "/costing/margin out-of-range 0..0.95")]
    [InlineData("""{ "/costing": { "contingency": -0.1 } }""", "/costing/contingency out-of-range 0..1")]
    [InlineData("""{ "/costing": { "overheadHourly": "12,00" } }""", "/costing/overheadHourly bad-form")]
    [InlineData("""{ "/costing": { "labour": { "matching": 0.2 } } }""", "/costing/labour/hourlyRate required")]
    [InlineData(
        """{ "/costing": { "labour": { "hourlyRate": "30", "operations": [{ "operation": "sewing", "minutes": 1 }] } } }""",
        "/costing/labour/operations/0/operation unknown-value"
    )]
    [InlineData(
        """{ "/costing": { "labour": { "hourlyRate": "30", "operations": [{ "operation": "welt", "minutes": 1 }, { "operation":"""
            + """ "welt", "minutes": 2 }] } } }""",
        "/costing/labour/operations/1/operation duplicate"
    )]
    [InlineData(
        """{ "/costing": { "labour": { "hourlyRate": "30", "operations": [{ "operation": "welt" }] } } }""",
        "/costing/labour/operations/0/minutes required"
    )]
    [InlineData("""{ "/costing": { "rounding": { "step": "0.001" } } }""", "/costing/rounding/step out-of-range 0.01..")]
    [InlineData("""{ "/costing": { "rounding": { "step": "0" } } }""", "/costing/rounding/step out-of-range 0.01..")]
    [InlineData(
        """{ "/prices/0/breaks": [{ "from": 2, "amount": "1" }, { "from": 2, "amount": "0.9" }] }""",
        "/prices/0/breaks/1/from not-rising"
    )]
    [InlineData("""{ "/prices/0/breaks": [{ "from": 0, "amount": "1" }] }""", "/prices/0/breaks/0/from out-of-range 0.001..1000000")]
    [InlineData("""{ "/prices/0/step": 0 }""", "/prices/0/step out-of-range 0.001..1000")]
    [InlineData(
        """{ "/fabrics/0/price/breaks": [{ "from": 9, "amount": "1" }, { "from": 2, "amount": "0.9" }] }""",
        "/fabrics/0/price/breaks/1/from not-rising"
    )]
    [InlineData("""{ "/fabrics/0/price/cutFee": "-1" }""", "/fabrics/0/price/cutFee bad-form")]
    [InlineData("""{ "/costing": { "charges": [{ "amount": "5" }] } }""", "/costing/charges/0/label required")]
    [InlineData("""{ "/costing": { "charges": [{ "label": "Cutting", "amount": "-5" }] } }""", "/costing/charges/0/amount bad-form")]
    [InlineData("""{ "/costing": { "minimum": "all" } }""", "/costing/minimum bad-form")]
    [InlineData("""{ "/costing": { "discount": {} } }""", "/costing/discount/percent required")]
    [InlineData("""{ "/costing": { "discount": { "percent": 10, "amount": "5" } } }""", "/costing/discount/amount not-combinable")]
    [InlineData("""{ "/costing": { "discount": { "percent": 101 } } }""", "/costing/discount/percent out-of-range 0..100")]
    [InlineData("""{ "/costing": { "tax": {} } }""", "/costing/tax/rate required")]
    [InlineData("""{ "/costing": { "tax": { "rate": 8.25 } } }""", "/costing/tax/rate out-of-range 0..1")]
    [InlineData("""{ "/lines": [{ "label": "Delivery" }] }""", "/lines/0/amount required")]
    [InlineData("""{ "/lines": [{ "label": "Delivery", "amount": "5", "quantity": 0 }] }""", "/lines/0/quantity out-of-range 0.001..10000")]
    [InlineData("""{ "/due": "tomorrow" }""", "/due bad-form")]
    [InlineData("""{ "/due": "2026-02-30" }""", "/due bad-form")]
    [InlineData("""{ "/priceBook": "attic" }""", "/priceBook unknown-price-book")]
    public void A_broken_rule_is_told(string changes, params string[] violations) =>
        Assert.Equal(violations, SampleOrder.Validate(changes).Violations.Select(SampleOrder.Written));

    [Fact]
    public void A_gain_alone_asks_for_no_currency() =>
        Assert.Empty(
            SampleOrder
                .Validate("""{ "/currency": null, "/prices": null, "/fabrics/0/price": null, "/costing": { "markup": 0.5 } }""")
                .Violations
        );

    [Fact]
    public void An_hour_s_price_asks_for_a_currency() =>
        Assert.Equal(
            ["/currency required"],
            SampleOrder
                .Validate(
                    """{ "/currency": null, "/prices": null, "/fabrics/0/price": null, "/costing": { "labour": { "hourlyRate": "30" } } }"""
                )
                .Violations.Select(SampleOrder.Written)
        );
}
