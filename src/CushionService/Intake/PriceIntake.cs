using System.Collections.Immutable;
using System.Globalization;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>Checks prices, and specifies them.</summary>
/// <remarks>Amounts are decimal text, of at most nine digits and six decimals, so that no binary fraction comes between. A quantity break
/// holds from its quantity on.</remarks>
internal static class PriceIntake
{
    /// <summary>Prices by item, each instead of a usual one; those that were refused are left out.</summary>
    /// <param name="prices">The prices as written; null for none.</param>
    /// <param name="usual">What a price book says.</param>
    /// <param name="currency">The currency of the amounts; null where none is known.</param>
    /// <param name="list">The property that holds them.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static ImmutableDictionary<string, ItemPriceSpecification> Read(
        IReadOnlyList<ItemPrice?>? prices,
        ImmutableDictionary<string, ItemPriceSpecification> usual,
        Currency? currency,
        string list,
        Findings findings
    )
    {
        if (prices is not { Count: > 0 })
        {
            return usual;
        }

        // A price of the order is taken instead of the price book's of the same item.
        ImmutableDictionary<string, ItemPriceSpecification>.Builder specified = usual.ToBuilder();
        for (int i = 0; i < prices.Count; i++)
        {
            if (prices[i] is { } price && OfItem(price, currency, findings.Within(list, i)) is { } one)
            {
                specified[price.Item!] = one;
            }
        }

        return specified.ToImmutable();
    }

    /// <summary>The price of a fabric; null where it was refused.</summary>
    public static ItemPriceSpecification? OfFabric(Price price, Currency? currency, Findings findings)
    {
        // The form and the breaks are both checked, whatever the other says: no short cut by the operator.
        bool sound = RecordForm<Price>.Read(price, findings).IsSound;
        sound &= BreaksAreSound(price.Breaks, findings);
        return sound && currency is { } known ? Of(price.Amount!, price.Per!.Value, price.Breaks, price.CutFee, known) : null;
    }

    /// <summary>An amount, which has passed its form, as a number.</summary>
    public static decimal Number(string amount) => decimal.Parse(amount, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    /// <summary>An amount, which has passed its form, in a currency.</summary>
    public static Money Amount(string amount, Currency currency) => new(Number(amount), currency);

    // The price of what is not a fabric, with how it is sold.
    private static ItemPriceSpecification? OfItem(ItemPrice price, Currency? currency, Findings findings)
    {
        bool sound = RecordForm<ItemPrice>.Read(price, findings).IsSound;
        sound &= BreaksAreSound(price.Breaks, findings);
        return sound && currency is { } known
            ? Of(price.Amount!, price.Per!.Value, price.Breaks, price.CutFee, known) with
            {
                Step = price.Step?.Read(),
                Minimum = price.Minimum?.Read(),
            }
            : null;
    }

    // Quantities rise from break to break, so that each quantity has one price.
    private static bool BreaksAreSound(IReadOnlyList<PriceBreak?>? breaks, Findings findings)
    {
        bool sound = true;
        for (int i = 0; i < breaks?.Count; i++)
        {
            Findings at = findings.Within(nameof(Price.Breaks), i);
            // A gap has no place of its own fields, so it is reported as a whole.
            if (breaks[i] is not { } step)
            {
                at.Refuse("", "required", FieldTexts.NullBreak);
                sound = false;
                continue;
            }

            sound &= RecordForm<PriceBreak>.Read(step, at).IsSound;
            // Equal quantities would have two prices.
            if (
                step.From?.TryRead(out Fraction from) == true
                && i > 0
                && breaks[i - 1]?.From?.TryRead(out Fraction before) == true
                && from <= before
            )
            {
                at.Refuse(nameof(step.From), "not-rising", PriceTexts.BreaksNotRising);
                sound = false;
            }
        }

        return sound;
    }

    // A price per unit of sale, with its breaks and a fee for each cut. What it is made of has passed its form.
    private static ItemPriceSpecification Of(
        string amount,
        SaleUnit per,
        IReadOnlyList<PriceBreak>? breaks,
        string? cutFee,
        Currency currency
    ) =>
        new(Amount(amount, currency), per)
        {
            Breaks = [.. (breaks ?? []).Select(step => new QuantityBreak(step.From!.Value.Read(), Amount(step.Amount!, currency)))],
            CutFee = cutFee is null ? null : Amount(cutFee, currency),
        };
}
