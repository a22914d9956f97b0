using System.Collections.Immutable;
using CushionService.Engine.Costing;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Tests.Costing;

public sealed class CostFacts
{
    private static readonly Currency Dollars = new("USD");

    [Theory]
    [InlineData(50, 0, "146.70", Sources.Derived)]
    [InlineData(0, 40, "163.00", Sources.Derived)]
    [InlineData(0, 50, "195.60", Sources.Derived)]
    public void Markup_is_on_the_cost_and_margin_on_the_price(int markupPercent, int marginPercent, string price, string source)
    {
        // 1 1/8 yd at 24, 2.2 lb at 9, notions 6, an hour and a half at 30.
        var cost = new Money((1.125m * 24) + (2.2m * 9) + 6 + (1.5m * 30), Dollars);

        Assert.Equal("97.80", cost.ToString());
        Assert.Equal(price, (markupPercent > 0 ? Cost.AtMarkup(cost, markupPercent / 100m) : Cost.AtMargin(cost, marginPercent / 100m)).RoundHalfUp().ToString());
    }

    [Theory]
    [InlineData(25, "20.0")]
    [InlineData(50, "33.3")]
    [InlineData(75, "42.9")]
    [InlineData(100, "50.0")]
    [InlineData(150, "60.0")]
    [InlineData(200, "66.7")]
    public void A_markup_is_a_margin_of_m_over_1_plus_m(int markupPercent, string marginPercent)
    {
        // Sources.Mathematics
        decimal price = Cost.AtMarkup(new Money(100, Dollars), markupPercent / 100m).Amount;

        Assert.Equal(marginPercent, ((price - 100) / price * 100).ToString("F1"));
    }

    [Fact]
    public void The_whole_price_cannot_be_margin() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Cost.AtMargin(new Money(1, Dollars), 1));

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

    [Fact]
    public void What_has_no_price_in_its_unit_is_left_out_and_named()
    {
        Cost cost = Cost.Of(
            Order(KnifeEdge(18, 18, HandSewn)) with { Prices = Prices(("zipper", new ItemPriceSpecification(new Money(3, Dollars), SaleUnit.Yd))) },
            [Bought("zipper", 1), Bought("thread", 20)],
            Dollars);

        Assert.Equal(["zipper", "thread"], cost.Unpriced.ToArray());
        Assert.Equal("0.00", cost.Total.ToString());
    }

    [Fact]
    public void Cloth_is_priced_by_what_is_sold_not_by_what_is_laid()
    {
        OrderSpecification order = Order(KnifeEdge(18, 18, HandSewn), Cloth with { Price = new ItemPriceSpecification(new Money(18.90m, Dollars), SaleUnit.Yd) });

        // 19 in laid out, 5/8 yd sold.
        Assert.Equal("11.81", Quote(order with { Currency = Dollars }).Cost!.Lines[0].Amount.ToString());
    }

    [Fact]
    public void An_order_without_a_currency_has_no_cost() => Assert.Null(Quote(Order(KnifeEdge(18, 18, HandSewn))).Cost);

    private static Cost Priced(params (string Item, decimal Quantity, string Price)[] lines) => Cost.Of(
        Order(KnifeEdge(18, 18, HandSewn)) with
        {
            Prices = Prices([.. lines.Select(line => (line.Item, new ItemPriceSpecification(new Money(decimal.Parse(line.Price), Dollars), SaleUnit.Each)))]),
        },
        [.. lines.Select(line => Bought(line.Item, line.Quantity))],
        Dollars);

    private static Material Bought(string item, decimal quantity) => new(item, MaterialKind.Thread, quantity, SaleUnit.Each, "");

    private static ImmutableDictionary<string, ItemPriceSpecification> Prices(params (string Item, ItemPriceSpecification Price)[] prices) =>
        prices.ToImmutableDictionary(price => price.Item, price => price.Price);
}
