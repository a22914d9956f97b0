using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Pricing;

/// <summary>How a price is rounded.</summary>
/// <param name="Step">Prices are whole multiples of it; above 0, and itself a multiple of the smallest coin.</param>
/// <param name="Direction">Which multiple.</param>
public sealed record RoundingSpecification(Money Step, RoundingDirection Direction)
{
    /// <summary>The price as it is asked.</summary>
    /// <param name="price">What an order costs.</param>
    /// <param name="least">The least that it may cost; null for none. Rounding never goes below it.</param>
    public Money Of(Money price, Money? least = null)
    {
        Money rounded = Nearest(price);
        return least is { } floor && rounded.Amount < floor.Amount ? Math.Ceiling(floor.Amount / Step.Amount) * Step : rounded;
    }

    private Money Nearest(Money price)
    {
        decimal steps = price.Amount / Step.Amount;
        return (Direction == RoundingDirection.Up ? Math.Ceiling(steps) : decimal.Round(steps, MidpointRounding.AwayFromZero)) * Step;
    }
}
