using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Pricing;

/// <summary>How a price is rounded.</summary>
/// <param name="Step">Prices are whole multiples of it; above 0, and itself a multiple of the smallest coin.</param>
/// <param name="Direction">Which multiple.</param>
public sealed record RoundingSpecification(Money Step, RoundingDirection Direction)
{
    /// <summary>The price as it is asked.</summary>
    public Money Of(Money price)
    {
        decimal steps = price.Amount / Step.Amount;
        return (Direction == RoundingDirection.Up ? Math.Ceiling(steps) : decimal.Round(steps, MidpointRounding.AwayFromZero)) * Step;
    }
}
