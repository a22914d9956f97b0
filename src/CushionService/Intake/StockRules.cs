using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>What an order's stocks ask of its prices, fills and fabrics.</summary>
internal static class StockRules
{
    public static void Check(Order order, Findings findings)
    {
        if (order.Stocks is not { Count: > 0 })
        {
            return;
        }

        HashSet<string> stocks = [];
        HashSet<string?> fabrics = [.. (order.Fabrics ?? []).Select(fabric => fabric?.Id)];
        foreach ((int i, Stock? stock) in order.Stocks.Index())
        {
            if (stock?.Id is { } id && stocks.Add(id) && fabrics.Contains(id))
            {
                findings.Refuse($"{nameof(Order.Stocks)}[{i}].Id", "duplicate", $"Id {id} names a fabric of the order.");
            }
        }

        UnitsAgree(order.Stocks, order.Prices, nameof(Order.Prices), findings);
    }

    /// <summary>A stock and its price have one unit.</summary>
    public static void UnitsAgree(IReadOnlyList<Stock>? stocks, IReadOnlyList<ItemPrice>? prices, string list, Findings findings)
    {
        Dictionary<string, Stock> known = [];
        foreach (Stock stock in stocks ?? [])
        {
            known.TryAdd(stock?.Id ?? "", stock!);
        }

        foreach ((int i, ItemPrice? price) in (prices ?? []).Index())
        {
            if (
                price is { Item: { } item, Per: { } per }
                && known.TryGetValue(item, out Stock? stock)
                && stock.Sold?.Unit is { } unit
                && unit != per
            )
            {
                string word = CushionValidator.Json(unit);
                findings.Refuse($"{list}[{i}].Per", "not-combinable", $"Stock {item} is sold by {word}; its price must be for one {word}.");
            }
        }
    }

    /// <summary>Refuses the name of a stock that is of another kind, or that an order with stocks of the kind does not have.</summary>
    public static void Names(string? name, MaterialKind kind, string field, Findings findings)
    {
        OrderReading order = findings.Reading;
        bool wrong = order.Stock(name) is { Kind: { } other } ? other != kind : order.Stocks.Any(stock => stock.Kind == kind);
        if (name is not null && wrong)
        {
            findings.Refuse(
                field,
                "unknown-stock",
                $"{FieldNames.Words(field.Split('.')[^1])} names {name}, which is no {CushionValidator.Json(kind)} among the order's stocks."
            );
        }
    }
}
