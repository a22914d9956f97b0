using CushionService.Contract.Orders;

namespace CushionService.Intake;

/// <summary>The prices that an order has besides those of a price book.</summary>
/// <remarks>A caller needs a right of its own to bring prices: a price that a page sends cannot be trusted by the shop that shows
/// it.</remarks>
internal static class OwnPrices
{
    /// <summary>Where an order has prices of its own.</summary>
    /// <param name="order">The order as written.</param>
    /// <returns>JSON Pointers, found while the sequence is read.</returns>
    public static IEnumerable<string> Brought(Order order)
    {
        if (order.Prices is { Count: > 0 })
        {
            yield return "/prices";
        }

        if (order.Lines is { Count: > 0 })
        {
            yield return "/lines";
        }

        // A costing is priced too: its hourly rates are amounts.
        if (order.Costing is not null)
        {
            yield return "/costing";
        }

        for (int i = 0; i < order.Fabrics?.Count; i++)
        {
            if (order.Fabrics[i]?.Price is not null)
            {
                yield return $"/fabrics/{i}/price";
            }
        }

        // An option of a candidate is a fabric, with a price like any other.
        for (int c = 0; c < order.Candidates?.Count; c++)
        {
            for (int o = 0; o < order.Candidates[c]?.Options?.Count; o++)
            {
                if (order.Candidates[c].Options![o]?.Price is not null)
                {
                    yield return $"/candidates/{c}/options/{o}/price";
                }
            }
        }
    }

    /// <summary>Whether an order has an amount of money.</summary>
    /// <remarks>Percentages and minutes are no amounts. An order that has amounts needs a currency.</remarks>
    public static bool HasAmounts(Order order) =>
        Brought(order).Any(static pointer => pointer != "/costing")
        || order.Costing
            is { Labour: not null }
                or { OverheadHourly: not null }
                or { Rounding: not null }
                or { Charges.Count: > 0 }
                or { Minimum: not null }
                or { Discount.Amount: not null };
}
