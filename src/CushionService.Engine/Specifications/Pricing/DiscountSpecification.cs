using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Pricing;

/// <summary>What is taken off: a share of what it is taken from, or an amount.</summary>
/// <param name="Share">From 0 to 1; null for an amount.</param>
/// <param name="Amount">At least 0, without tax; null for a share.</param>
/// <param name="On">What it is taken from.</param>
public sealed record DiscountSpecification(decimal? Share, Money? Amount, DiscountBase On)
{
    /// <summary>What is taken off, in whole coins; no more than there is.</summary>
    /// <param name="basis">What it is taken from.</param>
    public Money Of(Money basis)
    {
        Money off = Amount is { } fixedAmount ? fixedAmount.RoundHalfUp() : (Share!.Value * basis).RoundHalfUp();
        return off.Amount > basis.Amount ? basis : off;
    }
}
