using System.Collections.Immutable;
using System.Globalization;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>Reads prices that keep every rule.</summary>
internal static class PriceReading
{
    /// <summary>No prices.</summary>
    public static ImmutableDictionary<string, ItemPriceSpecification> None => ImmutableDictionary<string, ItemPriceSpecification>.Empty;

    /// <summary>Prices by item, each in the place of a usual one.</summary>
    public static ImmutableDictionary<string, ItemPriceSpecification> Of(
        IReadOnlyList<ItemPrice> prices,
        ImmutableDictionary<string, ItemPriceSpecification> usual,
        Currency? currency
    ) => prices.Count == 0 ? usual : usual.SetItems(prices.Select(price => KeyValuePair.Create(price.Item!, Of(price, currency!.Value))));

    /// <summary>The price of a fabric.</summary>
    public static ItemPriceSpecification Of(Price price, Currency currency) =>
        Of(price.Amount!, price.Per!.Value, price.Breaks, price.CutFee, currency);

    /// <summary>What the order's price book says of a fabric; null when it says nothing.</summary>
    public static ItemPriceSpecification? InBook(Fabric fabric, OrderReading order) =>
        order.Book?.Prices.GetValueOrDefault(fabric.Item ?? fabric.Id ?? "");

    /// <summary>An amount in a currency.</summary>
    public static Money Amount(string amount, Currency currency) => new(Number(amount), currency);

    /// <summary>An amount as a number.</summary>
    public static decimal Number(string amount) => decimal.Parse(amount, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static ItemPriceSpecification Of(ItemPrice price, Currency currency) =>
        Of(price.Amount!, price.Per!.Value, price.Breaks, price.CutFee, currency) with
        {
            Step = (decimal?)price.Step,
            Minimum = (decimal?)price.Minimum,
        };

    private static ItemPriceSpecification Of(
        string amount,
        SaleUnit per,
        IReadOnlyList<PriceBreak>? breaks,
        string? cutFee,
        Currency currency
    ) =>
        new(Amount(amount, currency), per)
        {
            Breaks = [.. (breaks ?? []).Select(step => new QuantityBreak((decimal)step.From!.Value, Amount(step.Amount!, currency)))],
            CutFee = cutFee is null ? null : Amount(cutFee, currency),
        };
}
