using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>What an order's stocks ask of the prices and the fills that name them.</summary>
internal static class StockNames
{
    /// <summary>Refuses the name of a stock that is of another kind, or that an order with stocks of the kind does not have.</summary>
    public static void Check(string? name, MaterialKind kind, string field, OrderContext order, Findings findings)
    {
        if (name is null)
        {
            return;
        }

        bool wrong = order.Stock(name) is { Kind: { } other } ? other != kind : order.Stocks.Any(stock => stock.Kind == kind);
        if (wrong)
        {
            findings.Refuse(field, "unknown-stock", OrderTexts.UnknownStock(kind, name));
        }
    }

    /// <summary>Refuses a price that is for another unit than its stock is sold by.</summary>
    public static void UnitsAgree(IReadOnlyList<Stock?>? stocks, IReadOnlyList<ItemPrice?>? prices, string list, Findings findings)
    {
        Dictionary<string, Stock?> known = [];
        foreach (Stock? stock in stocks ?? [])
        {
            known.TryAdd(stock?.Id ?? "", stock);
        }

        foreach ((int i, ItemPrice? price) in (prices ?? []).Index())
        {
            if (price is { Item: { } item, Per: { } per } && known.GetValueOrDefault(item) is { Sold.Unit: { } unit } && unit != per)
            {
                findings.Refuse($"{list}[{i}].Per", "not-combinable", StockTexts.PriceUnit(item, unit));
            }
        }
    }
}
