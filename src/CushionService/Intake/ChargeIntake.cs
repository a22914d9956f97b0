using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>Checks what is charged at the counter, and specifies it: fees, other lines, a discount, a tax.</summary>
internal static class ChargeIntake
{
    /// <summary>The fees; null where the costing has none of its own.</summary>
    /// <param name="charges">The fees as written; null for none.</param>
    /// <param name="currency">The currency of the amounts; null where none is known.</param>
    /// <param name="findings">Takes what is wrong with the costing.</param>
    public static ImmutableArray<ChargeSpecification>? Charges(IReadOnlyList<Charge?>? charges, Currency? currency, Findings findings)
    {
        // A message cannot tell an empty list from none.
        if (charges is not { Count: > 0 })
        {
            return null;
        }

        var specified = ImmutableArray.CreateBuilder<ChargeSpecification>();
        for (int i = 0; i < charges.Count; i++)
        {
            Findings at = findings.Within(nameof(Costing.Charges), i);
            if (charges[i] is not { } charge)
            {
                at.Refuse("", "required", FieldTexts.NullEntry("charges"));
            }
            else if (RecordForm<Charge>.Read(charge, at).IsSound && currency is { } money)
            {
                specified.Add(
                    new ChargeSpecification(charge.Label!, PriceIntake.Amount(charge.Amount!, money), charge.Per ?? ChargeBasis.Order)
                );
            }
        }

        return specified.ToImmutable();
    }

    /// <summary>The other lines of an order; those that were refused are left out.</summary>
    /// <param name="lines">The lines as written; null for none.</param>
    /// <param name="currency">The currency of the amounts; null where none is known.</param>
    /// <param name="findings">Takes what is wrong with the order.</param>
    public static ImmutableArray<FreeLineSpecification> Lines(IReadOnlyList<FreeLine?>? lines, Currency? currency, Findings findings)
    {
        var specified = ImmutableArray.CreateBuilder<FreeLineSpecification>();
        for (int i = 0; i < lines?.Count; i++)
        {
            // A gap has been reported with the order.
            if (
                lines[i] is { } line
                && RecordForm<FreeLine>.Read(line, findings.Within(nameof(Order.Lines), i)).IsSound
                && currency is { } money
            )
            {
                specified.Add(
                    new FreeLineSpecification(line.Label!, (decimal)(line.Quantity ?? 1), PriceIntake.Amount(line.Amount!, money))
                );
            }
        }

        return specified.ToImmutable();
    }

    /// <summary>The discount; null where it was refused.</summary>
    /// <param name="discount">The discount as written.</param>
    /// <param name="currency">The currency of its amount; null where none is known.</param>
    /// <param name="findings">Takes what is wrong with it.</param>
    public static DiscountSpecification? Discount(Discount discount, Currency? currency, Findings findings)
    {
        bool sound = RecordForm<Discount>.Read(discount, findings).IsSound;
        if (discount is { Percent: null, Amount: null })
        {
            findings.Refuse(nameof(discount.Percent), "required", PriceTexts.PercentOrAmountRequired);
            return null;
        }

        if (discount is { Percent: not null, Amount: not null })
        {
            findings.Refuse(nameof(discount.Amount), "not-combinable", PriceTexts.PercentOrAmount);
            return null;
        }

        return sound && currency is { } money
            ? new DiscountSpecification(
                (decimal?)discount.Percent / 100,
                discount.Amount is { } off ? PriceIntake.Amount(off, money) : null,
                discount.On ?? DiscountBase.All
            )
            : null;
    }

    /// <summary>The tax; null where it was refused.</summary>
    /// <param name="tax">The tax as written.</param>
    /// <param name="findings">Takes what is wrong with it.</param>
    public static TaxSpecification? Tax(Tax tax, Findings findings) =>
        RecordForm<Tax>.Read(tax, findings).IsSound ? new TaxSpecification(tax.Label, (decimal)tax.Rate!.Value) : null;
}
