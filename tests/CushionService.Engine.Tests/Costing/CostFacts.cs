using System.Collections.Immutable;
using CushionService.Engine.Costing;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Tests.Costing;

/// <summary>What materials cost.</summary>
public sealed class CostFacts
{
    private static readonly Currency Dollars = new("USD");

    [Fact]
    public void Each_line_is_rounded_and_then_summed()
    {
        // Sources.Practice: three lines of 0.005 make 0.03, not 0.02.
        Cost cost = Priced(("a", 0.5m, "0.01"), ("b", 0.5m, "0.01"), ("c", 0.5m, "0.01"));

        Assert.Equal("0.03", cost.Total.ToString());
        Assert.All(cost.Lines, line => Assert.Equal("0.01", line.Amount.ToString()));
    }

    [Fact]
    public void A_unit_price_is_never_rounded()
    {
        // 18.91 would make 30.73.
        Assert.Equal("30.72", Priced(("a", 1.625m, "18.905")).Total.ToString());
    }

    [Theory]
    [InlineData(9, "10.00", "90.00")]
    [InlineData(10, "8.00", "80.00")]
    [InlineData(99, "8.00", "792.00")]
    [InlineData(100, "7.50", "750.00")]
    public void A_quantity_break_prices_all_that_is_bought(int quantity, string unitPrice, string amount)
    {
        // Sources.Practice
        CostLine line = Cost.Of(Ordered(("a", Broken)), [], [Bought("a", quantity)], Dollars).Lines.Single();

        Assert.Equal((unitPrice, amount), (line.UnitPrice.ToString(), line.Amount.ToString()));
    }

    [Fact]
    public void A_quantity_break_counts_every_line_of_an_item()
    {
        Cost cost = Cost.Of(Ordered(("a", Broken)), [], [Bought("a", 6), Bought("a", 4)], Dollars);

        Assert.Equal(["48.00", "32.00"], cost.Lines.Select(line => line.Amount.ToString()));
    }

    [Fact]
    public void A_cut_fee_is_charged_once_a_line_however_much_is_cut() =>
        Assert.Equal(
            "43.00",
            Cost.Of(Ordered(("a", At("10.00") with { CutFee = new Money(1.50m, Dollars) })), [], [Bought("a", 1), Bought("a", 3)], Dollars)
                .Total.ToString()
        );

    [Fact]
    public void What_has_no_price_in_its_unit_is_left_out_and_named()
    {
        Cost cost = Cost.Of(
            Ordered(("zipper", new ItemPriceSpecification(new Money(3, Dollars), SaleUnit.Yd))),
            [],
            [Bought("zipper", 1), Bought("thread", 20)],
            Dollars
        );

        Assert.Equal(["zipper", "thread"], cost.Unpriced.ToArray());
        Assert.Equal("0.00", cost.Total.ToString());
    }

    [Fact]
    public void Fabric_is_priced_by_what_is_sold_not_by_what_is_laid()
    {
        OrderSpecification order = Order(
            KnifeEdge(18, 18, HandSewn),
            Fabric with
            {
                Price = new ItemPriceSpecification(new Money(18.90m, Dollars), SaleUnit.Yd),
            }
        );

        // 19 in laid out, 5/8 yd sold.
        Assert.Equal("11.81", Quote(order with { Currency = Dollars }).Cost!.Lines[0].Amount.ToString());
    }

    [Fact]
    public void An_order_without_a_currency_has_no_cost() => Assert.Null(Quote(Order(KnifeEdge(18, 18, HandSewn))).Cost);

    private static ItemPriceSpecification Broken =>
        At("10.00") with
        {
            Breaks = [new QuantityBreak(10, new Money(8, Dollars)), new QuantityBreak(100, new Money(7.50m, Dollars))],
        };

    private static Cost Priced(params (string Item, decimal Quantity, string Price)[] lines) =>
        Cost.Of(
            Ordered([.. lines.Select(line => (line.Item, At(line.Price)))]),
            [],
            [.. lines.Select(line => Bought(line.Item, line.Quantity))],
            Dollars
        );

    private static OrderSpecification Ordered(params (string Item, ItemPriceSpecification Price)[] prices) =>
        Order(KnifeEdge(18, 18, HandSewn)) with
        {
            Prices = prices.ToImmutableDictionary(price => price.Item, price => price.Price),
        };

    private static ItemPriceSpecification At(string amount) => new(new Money(decimal.Parse(amount), Dollars), SaleUnit.Each);

    private static Material Bought(string item, decimal quantity) =>
        new(item, MaterialKind.Thread, quantity, SaleUnit.Each, MaterialTexts.Seam);
}
