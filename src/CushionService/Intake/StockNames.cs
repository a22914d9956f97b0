using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>What an order's stocks ask of the prices and the fills that name them.</summary>
internal static class StockNames
{
    /// <summary>Refuses the name of a stock that is of another kind, or that an order with stocks of the kind does not have.</summary>
    /// <param name="name">The stock as the part names it; null for none.</param>
    /// <param name="kind">The kind that the part needs.</param>
    /// <param name="field">The property that names it.</param>
    /// <param name="order">The order, with its stocks. Without stocks of the kind, a name is that of an item and not checked.</param>
    /// <param name="findings">Takes what is wrong with the part.</param>
    public static void Check(string? name, MaterialKind kind, string field, OrderContext order, Findings findings)
    {
        if (name is null)
        {
            return;
        }

        // With stocks of the kind a name must be one of them; without any it names an item of the shop.
        bool wrong = order.Stock(name) is { Kind: { } other } ? other != kind : order.Stocks.Any(stock => stock.Kind == kind);
        if (wrong)
        {
            findings.Refuse(field, "unknown-stock", OrderTexts.UnknownStock(kind, name));
        }
    }

    /// <summary>Refuses a price that is for another unit than its stock is sold by, or for other steps or another minimum.</summary>
    /// <param name="stocks">The stocks as written; null for none.</param>
    /// <param name="prices">The prices as written; null for none.</param>
    /// <param name="list">The property that holds the prices.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static void UnitsAgree(IReadOnlyList<Stock?>? stocks, IReadOnlyList<ItemPrice?>? prices, string list, Findings findings)
    {
        // Of two stocks with one id the first is meant; the second has been reported.
        Dictionary<string, Stock?> known = [];
        foreach (Stock? stock in stocks ?? [])
        {
            known.TryAdd(stock?.Id ?? "", stock);
        }

        foreach ((int i, ItemPrice? price) in (prices ?? []).Index())
        {
            // A stock without a rule of sale takes the price's.
            if (price is { Item: { } item, Per: { } per } && known.GetValueOrDefault(item) is { Sold: { Unit: { } unit } sold })
            {
                if (unit != per)
                {
                    findings.Refuse($"{list}[{i}].Per", "not-combinable", StockTexts.PriceUnit(item, unit));
                }

                Same(nameof(price.Step), price.Step, sold.Step, UnitSale.UsualStep(unit));
                Same(nameof(price.Minimum), price.Minimum, sold.Minimum, default);
            }

            // What cannot be read is reported by its form.
            void Same(string field, Quantity? priced, Quantity? stocked, Fraction usual)
            {
                Fraction own = usual;
                if (priced is { } given && given.TryRead(out Fraction read) && (stocked?.TryRead(out own) ?? true) && read != own)
                {
                    findings.Refuse($"{list}[{i}].{field}", "not-combinable", StockTexts.PriceSale(price!.Item!, FieldNames.Words(field)));
                }
            }
        }
    }
}
