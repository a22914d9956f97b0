using CushionService.Contract.Orders;

namespace CushionService.Intake;

/// <summary>The prices that an order has besides those of a price book.</summary>
internal static class OwnPrices
{
    /// <summary>Where an order has prices of its own.</summary>
    public static IEnumerable<string> Brought(Order order)
    {
        if (order.Prices is { Count: > 0 })
        {
            yield return "/prices";
        }

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
    public static bool HasAmounts(Order order) =>
        Brought(order).Any(static pointer => pointer != "/costing")
        || order.Costing is { Labour: not null } or { OverheadHourly: not null } or { Rounding: not null };
}
