using System.Collections.Immutable;
using System.Globalization;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Engine.Costing;

/// <summary>What is charged on top of materials and labour, in this order: contingency on the materials, overhead, the gain on or in all of
/// that, and the rounding of the price. Each is rounded half up to the smallest coin. The order is common practice, no source.</summary>
internal static class CostAdditions
{
    /// <summary>The additions of a costing, without those that are nothing.</summary>
    /// <param name="costing">What is charged.</param>
    /// <param name="materials">What the materials cost.</param>
    /// <param name="labour">What the labour costs.</param>
    /// <param name="minutes">How long it takes.</param>
    /// <returns>Each addition changes the sum that the next one is a share of.</returns>
    public static ImmutableArray<CostAddition> Of(CostingSpecification costing, Money materials, Money labour, decimal minutes)
    {
        var additions = ImmutableArray.CreateBuilder<CostAddition>();
        Money running = materials + labour;
        Add(
            CostAdditionKind.Contingency,
            (costing.Contingency * materials).RoundHalfUp(),
            $"{Percent(costing.Contingency)} of {materials} for materials"
        );
        Add(CostAdditionKind.Overhead, (costing.Overhead * running).RoundHalfUp(), $"{Percent(costing.Overhead)} of {running}");
        if (costing.OverheadHourly is { } hourly)
        {
            Add(
                CostAdditionKind.Overhead,
                LabourPricing.Hours(minutes, hourly),
                $"{Number(minutes)} min at {hourly} an hour",
                isHourly: true
            );
        }

        Money cost = running;
        Add(CostAdditionKind.Markup, Markup(cost, costing.Markup).RoundHalfUp() - cost, $"{Percent(costing.Markup)} on the cost, {cost}");
        cost = running;
        Money price = Margin(cost, costing.Margin).RoundHalfUp();
        Add(
            CostAdditionKind.Margin,
            price - cost,
            $"{Percent(costing.Margin)} of the price: {cost} ÷ (1 − {Number(costing.Margin)}) = {price}"
        );
        if (costing.Rounding is { } rounding)
        {
            Add(
                CostAdditionKind.Rounding,
                rounding.Of(running) - running,
                $"{running} {(rounding.Direction == RoundingDirection.Up ? "up to the next" : "to the nearest")} {rounding.Step}"
            );
        }

        return additions.ToImmutable();

        void Add(CostAdditionKind kind, Money amount, string because, bool isHourly = false)
        {
            if (amount.Amount != 0)
            {
                additions.Add(new CostAddition(kind, amount, because) { IsHourly = isHourly });
                running += amount;
            }
        }
    }

    /// <summary>The selling price at a markup on cost: cost × (1 + m) (general arithmetic).</summary>
    /// <param name="cost">What the order costs to make.</param>
    /// <param name="markup">A share of the cost, at least zero.</param>
    /// <returns>Not rounded.</returns>
    public static Money Markup(Money cost, decimal markup) => (1 + markup) * cost;

    /// <summary>The selling price at a margin on the price: cost / (1 − g), g below 1 (general arithmetic).</summary>
    /// <param name="cost">What the order costs to make.</param>
    /// <param name="margin">A share of the price, at least zero and below 1.</param>
    /// <returns>Not rounded.</returns>
    /// <exception cref="DivideByZeroException">The margin is 1.</exception>
    public static Money Margin(Money cost, decimal margin) => cost with { Amount = cost.Amount / (1 - margin) };

    private static string Percent(decimal share) => $"{Number(share * 100)} %";

    private static string Number(decimal number) => number.ToString("0.####", CultureInfo.InvariantCulture);
}
