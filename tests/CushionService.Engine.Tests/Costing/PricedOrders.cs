using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Tests.Quoting;

namespace CushionService.Engine.Tests.Costing;

/// <summary>Generated orders in which everything is priced and charged for; the same number always makes the same order.</summary>
internal static class PricedOrders
{
    private static readonly string[] Items = ["foam", "feather", "zipper", "hook-and-loop-tape", "thread", "buttons"];

    public static OrderSpecification Order(int number)
    {
        var random = new Random(-number - 1);
        Currency currency = new(
            random.Next(8) switch
            {
                0 => "JPY",
                1 => "KWD",
                _ => "USD",
            }
        );
        OrderSpecification order = GeneratedOrders.Order(number);
        return order with
        {
            Currency = currency,
            Fabrics =
            [
                .. order.Fabrics.Select(fabric =>
                    fabric with
                    {
                        Price = Price(fabric.Sold.Unit),
                        Repeat = number % 5 == 0 ? fabric.Repeat : null,
                    }
                ),
            ],
            Prices = Items.ToImmutableDictionary(
                item => item,
                item =>
                    Price(
                        item is "foam" or "feather" ? SaleUnit.Lb
                        : item is "thread" or "hook-and-loop-tape" ? SaleUnit.Yd
                        : SaleUnit.Each
                    )
            ),
            Costing = new CostingSpecification
            {
                Labour =
                    random.Next(5) == 0
                        ? null
                        : new LabourSpecification(
                            Amount(5000),
                            Operation.All.ToImmutableDictionary(done => done, _ => random.Next(0, 1200) / 10m),
                            random.Next(3) / 10m
                        ),
                Contingency = random.Next(12) / 100m,
                Overhead = random.Next(3) * 0.0725m,
                OverheadHourly = random.Next(2) == 0 ? null : Amount(3000),
                Markup = random.Next(2) == 0 ? random.Next(200) / 100m : 0,
                Rounding =
                    random.Next(3) == 0
                        ? null
                        : new RoundingSpecification(
                            new Money(random.Next(1, 5), currency),
                            random.Next(2) == 0 ? RoundingDirection.Up : RoundingDirection.Nearest
                        ),
            },
        };

        Money Amount(int most) => new(random.Next(1, most) / 1000m, currency);

        ItemPriceSpecification Price(SaleUnit per) => new(Amount(40_000), per) { CutFee = random.Next(3) == 0 ? Amount(2000) : null };
    }
}
