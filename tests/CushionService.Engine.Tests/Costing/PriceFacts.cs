using System.Collections.Immutable;
using System.Globalization;
using CushionService.Engine.Costing;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Costing;

/// <summary>From materials and labour to a price.</summary>
public sealed class PriceFacts
{
    private static readonly Currency Dollars = new("USD");

    // The least cut, 1 1/8 yd, at 24, 2.2 lb of foam at 9, notions for 6, an hour and a half at 30: 27.00 + 19.80 + 6.00 + 45.00.
    private static readonly OrderSpecification Box = Order(
        Boxed(24, 22, 4, BackZipper, BoxingJoins.Back) with
        {
            Fill = new FillSpecification(FillKind.Foam, "foam", 28.8332m, Length.Zero, 0.9m),
        },
        Fabric with
        {
            Sold = new SaleRule(SaleUnit.Yd, In(4.5m), In(40.5m)),
            Price = At(24, SaleUnit.Yd),
        }
    ) with
    {
        Currency = Dollars,
        Stocks =
        [
            new StockSpecification
            {
                Id = "zipper",
                Kind = MaterialKind.Zipper,
                Length = In(29),
            },
        ],
        Prices = ImmutableDictionary<string, ItemPriceSpecification>
            .Empty.Add("foam", At(9, SaleUnit.Lb))
            .Add("zipper", At(6, SaleUnit.Each))
            .Add("thread", At(0, SaleUnit.Yd)),
    };

    private static readonly LabourSpecification Workroom = new(
        new Money(30, Dollars),
        ImmutableDictionary<Operation, decimal>
            .Empty.Add(Operation.Of(Construction.Boxed), 75)
            .Add(Operation.Of(ClosureKind.Zipper), 15)
            .Add(Operation.Of(Construction.KnifeEdge), 25),
        0.2m
    );

    [Theory]
    [InlineData("0", "0", "97.80", Sources.Derived)]
    [InlineData("0.5", "0", "146.70", Sources.Derived)]
    [InlineData("0", "0.4", "163.00", Sources.Derived)]
    [InlineData("0", "0.5", "195.60", Sources.Derived)]
    public void Markup_is_on_the_cost_and_margin_on_the_price(string markup, string margin, string price, string source)
    {
        Cost cost = Costed(
            new CostingSpecification
            {
                Labour = Workroom,
                Markup = Number(markup),
                Margin = Number(margin),
            }
        );

        Assert.Empty(cost.Unpriced);
        Assert.Equal(price, cost.Total.ToString());
    }

    [Theory]
    [InlineData("0.25", "20.0")]
    [InlineData("0.333333", "25.0")]
    [InlineData("0.40", "28.6")]
    [InlineData("0.50", "33.3")]
    [InlineData("0.75", "42.9")]
    [InlineData("1.00", "50.0")]
    [InlineData("1.50", "60.0")]
    [InlineData("2.00", "66.7")]
    public void A_markup_is_a_margin_of_m_over_1_plus_m(string markup, string marginPercent)
    {
        // Sources.Mathematics: the same price comes of the markup and of that margin.
        decimal m = Number(markup);
        Money cost = new(97.80m, Dollars),
            price = CostAdditions.Markup(cost, m);

        Assert.Equal(marginPercent, (m / (1 + m) * 100).ToString("F1", CultureInfo.InvariantCulture));
        Assert.Equal(price.RoundHalfUp(), CostAdditions.Margin(cost, m / (1 + m)).RoundHalfUp());
    }

    [Theory]
    [InlineData("20.30", "9", "USD", "3.05")]
    [InlineData("29.90", "3", "USD", "1.50")]
    [InlineData("25.70", "27", "USD", "11.57")]
    [InlineData("23", "30", "JPY", "12")]
    public void Half_a_coin_of_labour_is_rounded_up(string hourly, string minutes, string currency, string expected)
    {
        // Sources.Derived. 20.30 x 9 / 60 = 3.045; 29.90 x 3 / 60 = 1.495; 25.70 x 27 / 60 = 11.565; 23 x 30 / 60 = 11.5.
        Money hour = new(Number(hourly), new Currency(currency));
        Assert.Equal(expected, LabourPricing.Hours(Number(minutes), hour).ToString());
    }

    [Fact]
    public void A_spool_of_known_length_with_a_price_for_each_is_bought_whole()
    {
        // Sources.Practice. The price says how it is sold, where the stock does not.
        StockSpecification spool = new()
        {
            Id = "spool",
            Kind = MaterialKind.Thread,
            Length = In(36 * 100),
        };
        Cost cost = Quote(Box with { Stocks = [.. Box.Stocks, spool], Prices = Box.Prices.Add("spool", At(4, SaleUnit.Each)) }).Cost!;

        CostLine line = Assert.Single(cost.Lines, line => line.Material.Item == "spool");
        Assert.Equal(SaleUnit.Each, line.Material.Unit);
        Assert.Equal(1, line.Material.Quantity.Denominator);
        Assert.Equal(4 * (decimal)line.Material.Quantity.Numerator, line.Amount.Amount);
        Assert.DoesNotContain("spool", cost.Unpriced);
    }

    [Theory]
    [InlineData("0", "0")]
    [InlineData("0.2", "19.56")]
    public void A_rate_of_tax_is_in_the_total_even_where_it_comes_to_nothing(string rate, string tax)
    {
        // Sources.Derived: 97.80 x 0.2 = 19.56.
        Cost cost = Costed(new CostingSpecification { Labour = Workroom, Tax = new TaxSpecification("Tax", Number(rate)) });
        Assert.Equal(Number(tax), cost.Tax!.Value.Amount);
        Assert.Null(Costed(new CostingSpecification { Labour = Workroom }).Tax);
    }

    [Fact]
    public void Of_two_ways_of_one_total_the_one_of_cheaper_materials_comes_first()
    {
        // Sources.Practice. A least price of 500 hides the difference from the customer, not from the workroom.
        Alternative Way(decimal yard) =>
            new([
                Quote(
                    Box with
                    {
                        Costing = new CostingSpecification { Minimum = new Money(500, Dollars) },
                        Fabrics = [Box.Fabrics[0] with { Price = At(yard, SaleUnit.Yd) }],
                    }
                ),
            ]);
        (Alternative dear, Alternative cheap) = (Way(24), Way(12));

        Assert.Equal(dear.Total, cheap.Total);
        Assert.True(Alternative.ByCost(cheap, dear) < 0);
    }

    [Fact]
    public void Contingency_is_on_materials_and_overhead_on_everything_before_the_gain()
    {
        // Sources.Practice. Materials 52.80 and labour 45.00: 5 % of 52.80 = 2.64; 10 % of 100.44 = 10.04; 90 min at 12 = 18.00; 50 % of
        // 128.48 = 64.24; 192.72 up to the next whole.
        Cost cost = Costed(
            new CostingSpecification
            {
                Labour = Workroom,
                Contingency = 0.05m,
                Overhead = 0.10m,
                OverheadHourly = new Money(12, Dollars),
                Markup = 0.5m,
                Rounding = new RoundingSpecification(new Money(1, Dollars), RoundingDirection.Up),
            }
        );

        Assert.Equal(
            ["Contingency 2.64", "Overhead 10.04", "Overhead 18.00", "Markup 64.24", "Rounding 0.28"],
            cost.Additions.Select(addition => $"{addition.Kind} {addition.Amount}")
        );
        Assert.Equal("5 % of 52.80 for materials", cost.Additions[0].Because.ToString());
        Assert.Equal("193.00", cost.Total.ToString());
    }

    [Theory]
    [InlineData("97.82", "0.05", RoundingDirection.Nearest, "97.80")]
    [InlineData("97.825", "0.05", RoundingDirection.Nearest, "97.85")]
    [InlineData("97.81", "0.05", RoundingDirection.Up, "97.85")]
    [InlineData("97.80", "0.05", RoundingDirection.Up, "97.80")]
    public void A_price_is_asked_in_whole_steps(string price, string step, RoundingDirection direction, string asked) =>
        Assert.Equal(
            asked,
            new RoundingSpecification(new Money(Number(step), Dollars), direction).Of(new Money(Number(price), Dollars)).ToString()
        );

    [Fact]
    public void An_operation_without_a_time_is_left_out_and_named() =>
        Assert.Equal(
            ["labour/zipper"],
            Costed(
                new CostingSpecification { Labour = Workroom with { Minutes = Workroom.Minutes.Remove(Operation.Of(ClosureKind.Zipper)) } }
            )
                .Unpriced.ToArray()
        );

    [Fact]
    public void Matching_a_repeat_takes_a_fifth_more_time()
    {
        // Sources.Practice: pattern match + 20 %.
        OrderSpecification matched = Box with
        {
            Fabrics = [Box.Fabrics[0] with { Repeat = new RepeatSpecification(In(9), null, DropKind.Straight) }],
        };
        Cost cost = Quote(matched with { Costing = new CostingSpecification { Labour = Workroom } }).Cost!;

        Assert.Equal([("boxed", 75m), ("zipper", 15m), ("matching", 18m)], cost.Labour.Select(line => (line.Operation, line.Minutes)));
    }

    [Fact]
    public void Every_addition_is_work_as_often_as_it_is_there()
    {
        CushionSpecification round = Box.Cushions[0] with
        {
            Quantity = 2,
            Outline = new CircleOutline(In(16)),
            Trim = new TrimSpecification
            {
                Edging = new WeltSpecification([EdgingPlace.Top, EdgingPlace.Bottom], In(0.15625m), WeltCut.Bias),
                Tufts = new TuftSpecification(3, 4, TuftGrid.Diamond, In(1), false, In(0)),
            },
        };

        Assert.Equal(
            [("boxed", 1), ("zipper", 1), ("round", 1), ("welt", 2), ("tuft", 18)],
            Workload.Of(round).Select(done => (done.Operation.Word, done.Times))
        );
    }

    [Fact]
    public void No_two_operations_share_a_word() => Assert.Equal(Operation.All.Length, Operation.All.Distinct().Count());

    private static Cost Costed(CostingSpecification costing) => Quote(Box with { Costing = costing }).Cost!;

    private static ItemPriceSpecification At(decimal amount, SaleUnit per) => new(new Money(amount, Dollars), per);

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
