using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>The rules of what an order is priced by: its price book, and its own prices.</summary>
internal static class PriceRules
{
    public static IEnumerable<Violation> Check(Order order, OrderReading reading) =>
        order.PriceBook is not { } name ? []
        : reading.Book is not { } book ? [new Violation("/priceBook", "unknown-price-book", $"There is no price book {name}.")]
        : order.Currency is { } currency && book.Currency.Code != currency
            ?
            [
                new Violation(
                    "/currency",
                    "wrong-currency",
                    $"The price book {book.Name} is in {book.Currency.Code}; an order that names it may not be in another currency."
                ),
            ]
        : [];

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

    /// <summary>How a fabric is sold: by the order, or else by the price book, and in the unit of its price.</summary>
    public static void Sold(Fabric fabric, Findings findings)
    {
        OrderReading order = findings.Reading;
        ItemPriceSpecification? priced = fabric.Price is null ? PriceReading.InBook(fabric, order) : null;
        if (fabric.Sold is null && SaleReading.InBook(fabric, order) is null && (order.Order.PriceBook is null || order.Book is not null))
        {
            findings.Refuse(
                nameof(Fabric.Sold),
                "required",
                order.Book is { } book
                    ? $"Sold is required; the price book {book.Name} does not sell this fabric by length."
                    : "Sold is required."
            );
        }

        SaleUnit? sold = fabric.Sold is { } sale ? sale.Unit : SaleReading.InBook(fabric, order)?.Unit;
        if (sold is { } unit && fabric.Price?.Per is { } per && per != unit)
        {
            findings.Refuse(
                "Price.Per",
                "not-combinable",
                $"The fabric is sold by the {Word(unit)}; its price must be for one {Word(unit)}."
            );
        }
        else if (fabric.Sold?.Unit is { } own && priced is not null && priced.Per != own)
        {
            findings.Refuse(
                "Sold.Unit",
                "not-combinable",
                $"The price book {order.Book!.Name} sells this fabric by the {Word(priced.Per)}."
            );
        }
    }

    /// <summary>Breaks rise.</summary>
    public static void Rise(IReadOnlyList<PriceBreak>? breaks, Findings findings)
    {
        for (int i = 1; i < breaks?.Count; i++)
        {
            if (breaks[i]?.From <= breaks[i - 1]?.From)
            {
                findings.Refuse($"Breaks[{i}].From", "not-rising", "Each break must begin at a larger quantity than the one before.");
            }
        }
    }

    private static string Word(SaleUnit unit) => Words<SaleUnit>.Of(unit);
}
