using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>Reads a costing that keeps every rule; what it leaves out is a usual one's.</summary>
internal static class CostingReading
{
    public static CostingSpecification Of(Costing? costing, CostingSpecification usual, Currency? currency)
    {
        if (costing is null || currency is not { } money)
        {
            return usual;
        }

        // One gain takes the place of the other.
        bool gains = costing.Markup is not null || costing.Margin is not null;
        return new CostingSpecification
        {
            Labour = costing.Labour is { } labour ? Of(labour, usual.Labour, money) : usual.Labour,
            Contingency = (decimal?)costing.Contingency ?? usual.Contingency,
            Overhead = (decimal?)costing.Overhead ?? usual.Overhead,
            OverheadHourly = costing.OverheadHourly is { } hourly ? PriceReading.Amount(hourly, money) : usual.OverheadHourly,
            Markup = gains ? (decimal)(costing.Markup ?? 0) : usual.Markup,
            Margin = gains ? (decimal)(costing.Margin ?? 0) : usual.Margin,
            Rounding = costing.Rounding is { } rounding
                ? new RoundingSpecification(PriceReading.Amount(rounding.Step!, money), rounding.Direction ?? RoundingDirection.Nearest)
                : usual.Rounding,
        };
    }

    private static LabourSpecification Of(Labour labour, LabourSpecification? usual, Currency currency) =>
        new(
            PriceReading.Amount(labour.HourlyRate!, currency),
            (usual?.Minutes ?? []).SetItems(
                (labour.Operations ?? []).Select(time => KeyValuePair.Create(new Operation(time.Operation!), (decimal)time.Minutes!.Value))
            ),
            (decimal?)labour.Matching ?? usual?.Matching ?? 0
        );
}
