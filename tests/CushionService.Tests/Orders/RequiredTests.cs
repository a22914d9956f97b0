namespace CushionService.Tests.Orders;

/// <summary>Every field that an order cannot do without.</summary>
public sealed class RequiredTests
{
    [Fact]
    public void The_order_that_these_tests_change_keeps_every_rule()
    {
        Assert.Empty(SampleOrder.Validate("{}").Violations.Select(SampleOrder.Written));
        Assert.Empty(SampleOrder.Validate("{}").Warnings.Select(SampleOrder.Written));
    }

    [Theory]
    [InlineData("/units")]
    [InlineData("/fabrics")]
    [InlineData("/cushions/0/id")]
    [InlineData("/cushions/0/construction")]
    [InlineData("/cushions/0/outline")]
    [InlineData("/cushions/0/outline/kind")]
    [InlineData("/cushions/0/outline/width")]
    [InlineData("/cushions/0/outline/depth")]
    [InlineData("/cushions/0/thickness")]
    [InlineData("/cushions/0/closure")]
    [InlineData("/cushions/0/closure/kind")]
    [InlineData("/cushions/0/handle/kind")]
    [InlineData("/cushions/0/handle/width")]
    [InlineData("/cushions/0/handle/length")]
    [InlineData("/cushions/0/handle/span")]
    [InlineData("/cushions/0/fabrics")]
    [InlineData("/cushions/0/fabrics/top")]
    [InlineData("/cushions/0/fill/kind")]
    [InlineData("/pieces/0/id")]
    [InlineData("/pieces/0/fabric")]
    [InlineData("/pieces/0/width")]
    [InlineData("/pieces/0/length")]
    [InlineData("/fabrics/1/id", "/cushions/1/fabrics/top unknown-fabric")]
    [InlineData("/fabrics/0/width")]
    [InlineData("/fabrics/0/sold")]
    [InlineData("/fabrics/0/sold/unit")]
    [InlineData("/fabrics/0/sold/step")]
    [InlineData("/fabrics/0/price/amount")]
    [InlineData("/fabrics/0/price/per")]
    [InlineData("/fabrics/0/repeat/length")]
    [InlineData("/prices/0/item")]
    [InlineData("/prices/0/amount")]
    [InlineData("/prices/0/per")]
    [InlineData("/currency")]
    public void A_missing_field_is_named(string pointer, params string[] besides) =>
        Assert.Equal(
            [.. besides, $"{pointer} required"],
            SampleOrder.Validate($$"""{ "{{pointer}}": null }""").Violations.Select(SampleOrder.Written)
        );

    [Theory]
    [InlineData("""{ "/fabrics/0/repeat/drop": "half" }""", "/fabrics/0/repeat/width required")]
    [InlineData("""{ "/cushions": [], "/pieces": [] }""", " empty-order")]
    [InlineData("""{ "/fabrics": [] }""", "/fabrics empty 1..50")]
    public void What_other_fields_ask_for_is_named(string changes, string violation) =>
        Assert.Contains(violation, SampleOrder.Validate(changes).Violations.Select(SampleOrder.Written));

    [Fact]
    public void With_one_fabric_every_part_is_made_of_it() =>
        Assert.Empty(
            SampleOrder
                .Validate(
                    """
                    { "/fabrics/1": null, "/cushions/0/fabrics": null, "/cushions/1/fabrics": null, "/cushions/2/fabrics": null,
                      "/pieces/0/fabric": null }
                    """
                )
                .Violations.Select(SampleOrder.Written)
        );
}
