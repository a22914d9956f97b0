using CushionService.Engine.Costing;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Tests.Costing;

/// <summary>The share that each line of cushions has of an order.</summary>
public sealed class CostShareFacts
{
    private const int Orders = 5000;
    private static readonly Currency Dollars = new("USD");

    [Fact]
    public void A_common_layout_is_shared_by_area()
    {
        // Sources.Derived: two faces of 19 × 19 and two of 9 × 19 share 1 1/8 yd at 20.00, 22.50, as 19 to 9.
        CushionSpecification wide = KnifeEdge(18, 18, HandSewn),
            narrow = KnifeEdge(8, 18, HandSewn) with { Id = "narrow" };
        OrderSpecification order = Order(wide, Fabric with { Price = new ItemPriceSpecification(new Money(20, Dollars), SaleUnit.Yd) });
        Cost cost = Quote(order with { Currency = Dollars, Cushions = [wide, narrow] }).Cost!;

        Assert.Equal(["seat 15.27", "narrow 7.23"], cost.Shares.Select(share => $"{share.Cushion} {share.Amount}"));
    }

    [Fact]
    public void The_maker_s_own_pieces_bear_a_share_of_their_own()
    {
        OrderSpecification order = Order(
            KnifeEdge(18, 18, HandSewn),
            Fabric with
            {
                Price = new ItemPriceSpecification(new Money(20, Dollars), SaleUnit.Yd),
            }
        );
        Cost cost = Quote(order with { Currency = Dollars, Pieces = [Piece("runner", 2, 19, 19)] }).Cost!;

        Assert.Equal(
            [("seat", 1, "11.25"), (null, 2, "11.25")],
            cost.Shares.Select(share => (share.Cushion, share.Quantity, share.Amount.ToString()))
        );
    }

    [Fact]
    public void Over_generated_orders_the_shares_sum_to_the_total_to_the_cent()
    {
        int shared = 0,
            several = 0;
        Parallel.For(
            0,
            Orders,
            number =>
            {
                OrderSpecification order = PricedOrders.Order(number);
                if (Drafting.Of(order) is { Violations.IsEmpty: true } drafting)
                {
                    Cost cost = QuotePipeline.Of(drafting, CancellationToken.None).Cost!;
                    decimal parts =
                        cost.Lines.Sum(line => line.Amount.Amount)
                        + cost.Labour.Sum(line => line.Amount.Amount)
                        + cost.Additions.Sum(addition => addition.Amount.Amount);

                    Assert.True(parts == cost.Total.Amount, $"Order {number}: the lines sum to {parts}, the total is {cost.Total}.");
                    Assert.True(
                        cost.Shares.Sum(share => share.Amount.Amount) == cost.Total.Amount,
                        $"Order {number}: the shares do not sum to {cost.Total}."
                    );
                    Assert.All(cost.Shares, share => Assert.Equal(share.Amount, share.Amount.RoundHalfUp()));
                    Assert.Equal(
                        [.. order.Cushions.Select(cushion => cushion.Id), .. order.Pieces.IsEmpty ? [] : new string?[] { null }],
                        cost.Shares.Select(share => share.Cushion)
                    );
                    Interlocked.Increment(ref shared);
                    Interlocked.Add(ref several, cost.Shares.Length > 1 ? 1 : 0);
                }
            }
        );

        Assert.InRange(shared, Orders * 2 / 3, Orders);
        Assert.True(several > Orders / 3, $"Only {several} orders had something to share.");
    }
}
