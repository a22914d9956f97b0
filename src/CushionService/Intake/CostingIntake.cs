using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>Checks what is charged beyond materials, and specifies it; what it leaves out is a usual costing's.</summary>
/// <remarks>Shares are of 1: a contingency of 0.05 adds 5 %. Times are in minutes, the hourly rates in the order's currency.</remarks>
internal static class CostingIntake
{
    // It keeps nothing of a costing, so that all threads share one.
    private static readonly CostingValidator Validator = new();

    /// <summary>The costing; the usual one where there is none, or it was refused.</summary>
    /// <param name="costing">The costing as written; null for none.</param>
    /// <param name="usual">What a price book says.</param>
    /// <param name="currency">The currency of the amounts; null where none is known.</param>
    /// <param name="findings">Takes what is wrong with the costing.</param>
    public static CostingSpecification Read(Costing? costing, CostingSpecification usual, Currency? currency, Findings findings)
    {
        if (costing is null)
        {
            return usual;
        }

        // Each part is read, so that all that is wrong is reported at once.
        bool sound = RecordForm<Costing>.Read(costing, findings).IsSound;
        LabourSpecification? labour = costing.Labour is { } work
            ? ReadLabour(work, usual.Labour, currency, findings.Within(nameof(costing.Labour)))
            : usual.Labour;
        RoundingSpecification? rounding = costing.Rounding is { } rounded
            ? ReadRounding(rounded, currency, findings.Within(nameof(costing.Rounding)))
            : usual.Rounding;
        ImmutableArray<ChargeSpecification>? charges = ChargeIntake.Charges(costing.Charges, currency, findings);
        DiscountSpecification? discount = costing.Discount is { } off
            ? ChargeIntake.Discount(off, currency, findings.Within(nameof(costing.Discount)))
            : usual.Discount;
        TaxSpecification? tax = costing.Tax is { } taxed ? ChargeIntake.Tax(taxed, findings.Within(nameof(costing.Tax))) : usual.Tax;
        findings.Report(Validator.Validate(costing));
        if (!sound || currency is not { } money)
        {
            return usual;
        }

        // One gain takes the place of the other.
        // A price book's markup would otherwise be added to the order's margin.
        bool gains = costing.Markup is not null || costing.Margin is not null;
        // What the costing leaves out is the price book's, figure by figure.
        return new CostingSpecification
        {
            Labour = labour,
            Contingency = (decimal?)costing.Contingency ?? usual.Contingency,
            Overhead = (decimal?)costing.Overhead ?? usual.Overhead,
            OverheadHourly = costing.OverheadHourly is { } hourly ? PriceIntake.Amount(hourly, money) : usual.OverheadHourly,
            Markup = gains ? (decimal)(costing.Markup ?? 0) : usual.Markup,
            Margin = gains ? (decimal)(costing.Margin ?? 0) : usual.Margin,
            Charges = charges ?? usual.Charges,
            Discount = discount,
            Minimum = costing.Minimum is { } least ? PriceIntake.Amount(least, money) : usual.Minimum,
            Tax = tax,
            Rounding = rounding,
        };
    }

    // The labour; what it leaves out is the price book's. Null where it was refused.
    private static LabourSpecification? ReadLabour(Labour labour, LabourSpecification? usual, Currency? currency, Findings findings)
    {
        bool sound = RecordForm<Labour>.Read(labour, findings).IsSound;
        ImmutableDictionary<Operation, decimal>.Builder minutes = (
            usual?.Minutes ?? ImmutableDictionary<Operation, decimal>.Empty
        ).ToBuilder();
        for (int i = 0; i < labour.Operations?.Count; i++)
        {
            if (
                labour.Operations[i] is { } time
                && RecordForm<OperationTime>.Read(time, findings.Within(nameof(labour.Operations), i)).IsSound
            )
            {
                // A time of the order is taken instead of the price book's of the same operation.
                minutes[new Operation(time.Operation!)] = (decimal)time.Minutes!.Value;
            }
        }

        return sound && currency is { } money
            ? new LabourSpecification(
                PriceIntake.Amount(labour.HourlyRate!, money),
                minutes.ToImmutable(),
                (decimal?)labour.Matching ?? usual?.Matching ?? 0
            )
            : null;
    }

    // The step that the total is rounded to, in whole coins of the currency.
    private static RoundingSpecification? ReadRounding(PriceRounding rounding, Currency? currency, Findings findings)
    {
        if (!RecordForm<PriceRounding>.Read(rounding, findings).IsSound || currency is not { } money)
        {
            return null;
        }

        Money step = PriceIntake.Amount(rounding.Step!, money);
        // Nothing is charged in parts of a coin.
        if (step.Amount <= 0 || step != step.RoundHalfUp())
        {
            Money coin = new((decimal)Math.Pow(10, -money.Decimals), money);
            findings.Refuse(
                nameof(rounding.Step),
                "out-of-range",
                PriceTexts.RoundingStep(coin, money.Code),
                new FindingRange((double)coin.Amount, null)
            );
        }

        return new RoundingSpecification(step, rounding.Direction ?? RoundingDirection.Nearest);
    }
}
