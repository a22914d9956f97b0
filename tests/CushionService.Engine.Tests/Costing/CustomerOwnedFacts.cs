using CushionService.Engine.Costing;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Engine.Tests.Costing;

/// <summary>The customer's own material: asked for, checked, and not charged.</summary>
public sealed class CustomerOwnedFacts
{
    [Theory]
    [InlineData(19, null)]
    [InlineData(18.5, 0.5)]
    [InlineData(9, 10.0)]
    public void What_was_brought_is_held_against_what_is_needed(double brought, double? missing)
    {
        // General mathematics: two faces of 19 in side by side on 54 in are 19 in long, whatever step a shop sells by.
        Quote quote = Quote(Order(KnifeEdge(18, 18, HandSewn), Fabric with { CustomerOwned = true, Brought = In((decimal)brought) }));

        Assert.Equal(
            missing is { } less ? MatchTexts.TooLittleBrought("main", In(19), In((decimal)brought), In((decimal)less)) : null,
            BroughtNote.Of(quote.Yardages.Single())?.Detail
        );
    }

    [Fact]
    public void It_is_on_the_bill_and_not_in_the_cost()
    {
        Quote quote = Quote(
            Order(KnifeEdge(18, 18, HandSewn), Fabric with { CustomerOwned = true }) with
            {
                Currency = new Currency("USD"),
                Costing = new CostingSpecification
                {
                    Charges = [new ChargeSpecification("Cutting", new Money(2, new Currency("USD")), ChargeBasis.Cut)],
                },
            }
        );
        Cost cost = quote.Cost!;

        Assert.Contains(quote.Materials, material => material.Item == "main");
        Assert.DoesNotContain(cost.Lines, line => line.Material.Item == "main");
        Assert.DoesNotContain("main", cost.Unpriced);
        Assert.Empty(cost.Additions);
    }
}
