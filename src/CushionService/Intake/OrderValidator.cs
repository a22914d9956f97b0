using CushionService.Contract.Orders;

namespace CushionService.Intake;

/// <summary>The rules of an order as a whole; those of its parts are in their own validators.</summary>
internal sealed class OrderValidator : RecordValidator<Order>
{
    private const int MostPieces = 10_000;

    public OrderValidator()
        : base(
            AttributeRules.Of<Order>(),
            Rules.Entries(nameof(Order.Cushions), (Order order) => order.Cushions, new CushionValidator()),
            Rules.Entries(nameof(Order.Pieces), (Order order) => order.Pieces, new LoosePieceValidator()),
            Rules.Entries(nameof(Order.Fabrics), (Order order) => order.Fabrics, new FabricValidator()),
            Rules.Entries(nameof(Order.Stocks), (Order order) => order.Stocks, new StockValidator()),
            Rules.Entries(nameof(Order.Prices), (Order order) => order.Prices, new ItemPriceValidator()),
            Rules.Entries(nameof(Order.Candidates), (Order order) => order.Candidates, new AttributeValidator<Candidate>()),
            Rules.Part(nameof(Order.Costing), (Order order) => order.Costing, new CostingValidator()),
            Rules.Part(nameof(Order.Workroom), (Order order) => order.Workroom, new WorkroomValidator()),
            HasNoGaps,
            HasSomething,
            NamesItsCurrency,
            NamesAreDistinct,
            FabricsAreKnown,
            PricesAreUsed,
            StockRules.Check
        ) { }

    private static void HasNoGaps(Order order, Findings findings)
    {
        Filled(order.Cushions, nameof(Order.Cushions));
        Filled(order.Pieces, nameof(Order.Pieces));
        Filled(order.Fabrics, nameof(Order.Fabrics));
        Filled(order.Stocks, nameof(Order.Stocks));
        Filled(order.Prices, nameof(Order.Prices));
        Filled(order.Candidates, nameof(Order.Candidates));

        void Filled(IReadOnlyList<object?>? entries, string list)
        {
            for (int i = 0; i < entries?.Count; i++)
            {
                if (entries[i] is null)
                {
                    findings.Refuse($"{list}[{i}]", "required", $"An entry of {FieldNames.Json(list)} may not be null.");
                }
            }
        }
    }

    private static void HasSomething(Order order, Findings findings)
    {
        if (order.Cushions is not { Count: > 0 } && order.Pieces is not { Count: > 0 })
        {
            findings.Refuse("", "empty-order", "An order needs at least one cushion or piece.");
        }

        // A cushion has at most some ten panels; the sum stops an order that no page could wait for.
        long pieces =
            (order.Cushions ?? []).Sum(static cushion => 10L * (cushion?.Quantity ?? 1))
            + (order.Pieces ?? []).Sum(static piece => (long)(piece?.Quantity ?? 1));
        if (pieces > MostPieces)
        {
            findings.Refuse(
                "",
                "too-many-pieces",
                $"An order may have at most {MostPieces} pieces, a cushion counting as ten.",
                new FindingRange(null, MostPieces)
            );
        }
    }

    private static void NamesItsCurrency(Order order, Findings findings)
    {
        if (order.Currency is null && PriceRules.HasAmounts(order))
        {
            findings.Refuse(nameof(Order.Currency), "required", "Currency is required when the order has prices.");
        }
    }

    private static void NamesAreDistinct(Order order, Findings findings)
    {
        Distinct(order.Cushions, static cushion => cushion?.Id, nameof(Order.Cushions), "Id");
        Distinct(order.Pieces, static piece => piece?.Id, nameof(Order.Pieces), "Id");
        Distinct(order.Fabrics, static fabric => fabric?.Id, nameof(Order.Fabrics), "Id");
        Distinct(order.Stocks, static stock => stock?.Id, nameof(Order.Stocks), "Id");
        Distinct(order.Prices, static price => price?.Item, nameof(Order.Prices), "Item");

        void Distinct<T>(IReadOnlyList<T>? entries, Func<T, string?> nameOf, string list, string field)
        {
            if (entries is not { Count: > 1 })
            {
                return;
            }

            var seen = new HashSet<string>(StringComparer.Ordinal);
            for (int i = 0; i < entries.Count; i++)
            {
                if (nameOf(entries[i]) is { } name && !seen.Add(name))
                {
                    findings.Refuse($"{list}[{i}].{field}", "duplicate", $"{field} {name} stands twice in {FieldNames.Json(list)}.");
                }
            }
        }
    }

    private static void FabricsAreKnown(Order order, Findings findings)
    {
        if (order.Fabrics is not { Count: > 0 } fabrics)
        {
            return;
        }

        var used = new Dictionary<string, bool>(fabrics.Count, StringComparer.Ordinal);
        for (int i = 0; i < fabrics.Count; i++)
        {
            if (fabrics[i]?.Id is { } id)
            {
                used[id] = false;
            }
        }

        string? only = findings.Reading.OnlyFabric;
        for (int i = 0; i < order.Cushions?.Count; i++)
        {
            Cushion? cushion = order.Cushions[i];
            if (cushion is { Fabrics: null })
            {
                Use(only, nameof(Order.Cushions), i, nameof(Cushion.Fabrics), required: true);
            }

            Use(cushion?.Fabrics?.Top, nameof(Order.Cushions), i, "Fabrics.Top");
            Use(cushion?.Fabrics?.Bottom, nameof(Order.Cushions), i, "Fabrics.Bottom");
            Use(cushion?.Fabrics?.Sides, nameof(Order.Cushions), i, "Fabrics.Sides");
            Use(cushion?.Ties?.Fabric, nameof(Order.Cushions), i, "Ties.Fabric");
            Use(cushion?.Straps?.Fabric, nameof(Order.Cushions), i, "Straps.Fabric");
            Use(cushion?.Pocket?.Fabric, nameof(Order.Cushions), i, "Pocket.Fabric");
            Use(cushion?.Edging?.Fabric, nameof(Order.Cushions), i, "Edging.Fabric");
            Use(cushion?.InnerCover?.Fabric, nameof(Order.Cushions), i, "InnerCover.Fabric");
            Use(cushion?.Handle?.Fabric, nameof(Order.Cushions), i, "Handle.Fabric");
        }

        for (int i = 0; i < order.Pieces?.Count; i++)
        {
            LoosePiece? piece = order.Pieces[i];
            Use(piece?.Fabric ?? only, nameof(Order.Pieces), i, "Fabric", required: piece is not null);
            Fabric? fabric = fabrics.FirstOrDefault(fabric => fabric?.Id is { } id && id == (piece?.Fabric ?? only));
            if (fabric is { OneWay: true } && piece?.Rotation is not null and not Nesting.Rotations.None)
            {
                findings.Warn(
                    $"{nameof(Order.Pieces)}[{i}].Rotation",
                    "one-way-fabric",
                    $"The piece is laid as it is drawn: nothing is turned on the one-way fabric {fabric.Id}."
                );
            }
        }

        for (int i = 0; i < fabrics.Count; i++)
        {
            if (fabrics[i]?.Id is { } id && !used[id])
            {
                findings.Warn($"{nameof(Order.Fabrics)}[{i}]", "unused-fabric", $"Nothing is made of the fabric {id}.");
            }
        }

        void Use(string? name, string list, int index, string field, bool required = false)
        {
            string Word() => field[(field.LastIndexOf('.') + 1)..];
            if (name is null && required)
            {
                findings.Refuse($"{list}[{index}].{field}", "required", $"{Word()} is required when the order has several fabrics.");
            }
            else if (name is not null && used.ContainsKey(name))
            {
                used[name] = true;
            }
            else if (name is not null)
            {
                findings.Refuse(
                    $"{list}[{index}].{field}",
                    "unknown-fabric",
                    $"{Word()} names the fabric {name}, which the order does not have."
                );
            }
        }
    }

    private static void PricesAreUsed(Order order, Findings findings)
    {
        if (order.Prices is not { Count: > 0 } prices)
        {
            return;
        }

        HashSet<string?> fabrics = [.. (order.Fabrics ?? []).Select(fabric => fabric?.Id)];
        foreach ((int i, ItemPrice? price) in prices.Index())
        {
            if (price?.Item is { } item && fabrics.Contains(item))
            {
                findings.Refuse(
                    $"{nameof(Order.Prices)}[{i}].Item",
                    "duplicate",
                    $"The price of the fabric {item} stands with the fabric."
                );
            }
        }
    }
}
