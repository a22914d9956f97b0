using System.Collections.Immutable;
using CushionService.Engine.Costing;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Tests.Costing;

/// <summary>What is charged at the counter. One yard of fabric at 20.00 and nothing else is bought: every figure is general arithmetic on
/// that.</summary>
public sealed class ChargeFacts
{
    private static readonly Currency Dollars = new("USD");

    [Theory]
    [InlineData(null, "", "20.00")]
    [InlineData("5.00 order", "charge 5.00", "25.00")]
    [InlineData("1.50 cushion", "charge 4.50", "24.50")]
    [InlineData("2.25 cut", "charge 2.25", "22.25")]
    public void Fees_are_charged_once_for_each_cushion_or_for_each_cut(string? charge, string additions, string total)
    {
        Cost cost = Price(CostingSpecification.None with { Charges = charge is null ? [] : [Charge(charge)] });

        Assert.Equal((additions, total), (Text(cost), cost.Total.ToString()));
    }

    [Theory]
    [InlineData(0.1, null, DiscountBase.All, "discount -2.50", "22.50")]
    [InlineData(0.1, null, DiscountBase.Fabric, "discount -2.00", "23.00")]
    [InlineData(null, 3.0, DiscountBase.All, "discount -3.00", "22.00")]
    [InlineData(null, 30.0, DiscountBase.Fabric, "discount -20.00", "5.00")]
    [InlineData(1.0, null, DiscountBase.All, "discount -25.00", "0.00")]
    public void A_discount_is_a_share_or_an_amount_of_the_fabric_or_of_all(
        double? share,
        double? amount,
        DiscountBase on,
        string discount,
        string total
    )
    {
        Cost cost = Price(
            CostingSpecification.None with
            {
                Charges = [Charge("5.00 order")],
                Discount = new DiscountSpecification((decimal?)share, amount is { } off ? Usd((decimal)off) : null, on),
            }
        );

        Assert.Equal(($"charge 5.00, {discount}", total), (Text(cost), cost.Total.ToString()));
    }

    [Theory]
    [InlineData(30, DiscountBase.Fabric, "all of 20.00 for fabric, since the discount of 30.00 is more")]
    [InlineData(30, DiscountBase.All, "all of 20.00, since the discount of 30.00 is more")]
    [InlineData(20, DiscountBase.All, "20.00 off 20.00")]
    public void A_discount_says_that_it_takes_no_more_than_there_is(double amount, DiscountBase on, string because)
    {
        Cost cost = Price(CostingSpecification.None with { Discount = new DiscountSpecification(null, Usd((decimal)amount), on) });

        Assert.Equal((because, "0.00"), (Assert.Single(cost.Additions).Because.ToString(), $"{cost.Total}"));
    }

    [Fact]
    public void A_price_finer_than_a_coin_is_said_as_it_is_given()
    {
        // 3 × 0.333333 = 0.999999, half up.
        Cost cost = Price(CostingSpecification.None, new FreeLineSpecification("Tag", 3, Usd(0.333333m)));

        Assert.Equal(("3 × 0.333333", "1.00"), (Assert.Single(cost.Additions).Because.ToString(), $"{cost.Additions[0].Amount}"));
    }

    [Theory]
    [InlineData(15, "", "20.00")]
    [InlineData(20, "", "20.00")]
    [InlineData(35.5, "minimum 15.50", "35.50")]
    public void The_least_price_fills_up_what_is_missing(double least, string additions, string total)
    {
        Cost cost = Price(CostingSpecification.None with { Minimum = Usd((decimal)least) });

        Assert.Equal((additions, total), (Text(cost), cost.Total.ToString()));
    }

    [Fact]
    public void Rounding_never_goes_below_the_least_price()
    {
        Cost cost = Price(
            CostingSpecification.None with
            {
                Minimum = Usd(30.02m),
                Rounding = new RoundingSpecification(Usd(0.05m), RoundingDirection.Nearest),
            }
        );

        Assert.Equal(("minimum 10.02, rounding 0.03", "30.05"), (Text(cost), cost.Total.ToString()));
    }

    [Theory]
    [InlineData(0.2, "tax 4.00", "24.00")]
    [InlineData(0.0825, "tax 1.65", "21.65")]
    [InlineData(0.00125, "tax 0.03", "20.03")]
    public void Tax_is_a_line_of_its_own_after_all_others(double rate, string additions, string total)
    {
        Cost cost = Price(CostingSpecification.None with { Tax = new TaxSpecification("Sales tax", (decimal)rate) });

        Assert.Equal((additions, total, "20.00"), (Text(cost), cost.Total.ToString(), cost.BeforeTax.ToString()));
    }

    [Fact]
    public void Without_a_rate_there_is_no_tax() => Assert.Null(Price(CostingSpecification.None).Tax);

    [Fact]
    public void Other_lines_are_a_quantity_at_a_price()
    {
        Cost cost = Price(CostingSpecification.None, new FreeLineSpecification("Delivery", 2.5m, Usd(7.99m)));
        CostAddition line = Assert.Single(cost.Additions);

        // 2.5 × 7.99 = 19.975, half up.
        Assert.Equal(
            ("Delivery", 2.5m, "2.5 × 7.99", "19.98", "39.98"),
            (line.Label, line.Quantity, line.Because.ToString(), $"{line.Amount}", $"{cost.Total}")
        );
    }

    [Fact]
    public void Everything_in_its_order_and_shared_to_the_coin()
    {
        OrderSpecification order = Two(
            new CostingSpecification
            {
                Contingency = 0.05m,
                Markup = 0.5m,
                Charges = [Charge("1.33 cushion"), Charge("4.99 order"), Charge("2.01 cut")],
                Discount = new DiscountSpecification(0.07m, null, DiscountBase.Fabric),
                Minimum = Usd(99.99m),
                Rounding = new RoundingSpecification(Usd(0.05m), RoundingDirection.Nearest),
                Tax = new TaxSpecification("VAT", 0.19m),
            }
        );
        Cost cost = Quote(order).Cost!;

        Assert.Equal(
            "Contingency Markup Line Charge Charge Charge Discount Minimum Rounding Tax",
            string.Join(' ', cost.Additions.Select(addition => addition.Kind))
        );
        Assert.Equal(cost.Total, cost.Shares.Select(share => share.Amount).Aggregate((sum, share) => sum + share));
        Assert.Equal("119.00", cost.Total.ToString());
        Assert.Equal(["nook 1", " 2"], cost.Groups.Select(group => $"{group.Group} {group.Quantity}"));
        Assert.Equal(cost.Total, cost.Groups.Select(group => group.Amount).Aggregate((sum, share) => sum + share));
    }

    [Fact]
    public void Cut_apart_an_order_is_charged_once_and_reaches_the_least_price_once()
    {
        OrderSpecification order = Two(
            new CostingSpecification
            {
                Charges = [Charge("5.00 order"), Charge("1.00 cushion")],
                Minimum = Usd(100),
                Tax = new TaxSpecification("Tax", 0.1m),
            }
        );
        ImmutableArray<Quote> parts = [.. SeparateCutting.Of(order).Select(Quote)];
        Alternative apart = new(parts) { Minimum = order.Costing.Minimum, Tax = order.Costing.Tax };

        Assert.Equal(
            ["5.00", "1.00", "2.00"],
            parts.SelectMany(part => part.Cost!.Additions.Where(one => one.Kind == CostAdditionKind.Charge)).Select(one => $"{one.Amount}")
        );
        Assert.Equal("110.00", apart.Total.ToString());
    }

    private static OrderSpecification Two(CostingSpecification costing) =>
        Order(KnifeEdge(18, 18, HandSewn) with { Id = "one", Group = "nook" }, Priced) with
        {
            Currency = Dollars,
            Cushions =
            [
                KnifeEdge(18, 18, HandSewn) with
                {
                    Id = "one",
                    Group = "nook",
                },
                KnifeEdge(10, 10, HandSewn) with
                {
                    Id = "two",
                    Quantity = 2,
                },
            ],
            Lines = [new FreeLineSpecification("Delivery", 1, Usd(3.33m))],
            Costing = costing,
        };

    private static FabricSpecification Priced => Fabric with { Price = new ItemPriceSpecification(Usd(20), SaleUnit.Yd) };

    // One yard of fabric for three cushions.
    private static Cost Price(CostingSpecification costing, params ImmutableArray<FreeLineSpecification> lines) =>
        Quote(
            Order(KnifeEdge(8, 8, HandSewn) with { Quantity = 3 }, Priced with { Sold = new SaleRule(SaleUnit.Yd, In(4.5m), In(36)) }) with
            {
                Currency = Dollars,
                Costing = costing,
                Lines = lines,
            }
        ).Cost!;

    private static ChargeSpecification Charge(string text) =>
        new("Fee", Usd(decimal.Parse(text.Split(' ')[0])), Enum.Parse<ChargeBasis>(text.Split(' ')[1], ignoreCase: true));

    private static string Text(Cost cost) =>
        string.Join(", ", cost.Additions.Select(addition => $"{addition.Kind.ToString().ToLowerInvariant()} {addition.Amount}"));

    private static Money Usd(decimal amount) => new(amount, Dollars);
}
