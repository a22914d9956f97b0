using CushionService.Contract.Orders;
using FluentValidation;

namespace CushionService.Validation;

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
            StockRules.Check)
    {
    }

    private static void HasNoGaps(Order order, ValidationContext<Order> context)
    {
        Filled(order.Cushions, nameof(Order.Cushions));
        Filled(order.Pieces, nameof(Order.Pieces));
        Filled(order.Fabrics, nameof(Order.Fabrics));
        Filled(order.Stocks, nameof(Order.Stocks));
        Filled(order.Prices, nameof(Order.Prices));
        Filled(order.Candidates, nameof(Order.Candidates));

        void Filled(IReadOnlyList<object?>? entries, string list)
        {
            foreach ((int index, object? entry) in (entries ?? []).Index())
            {
                if (entry is null)
                {
                    context.Refuse($"{list}[{index}]", "required", $"An entry of {FieldNames.Json(list)} may not be null.");
                }
            }
        }
    }

    private static void HasSomething(Order order, ValidationContext<Order> context)
    {
        if (order.Cushions is not { Count: > 0 } && order.Pieces is not { Count: > 0 })
        {
            context.Refuse("", "empty-order", "An order needs at least one cushion or piece.");
        }

        // A cushion has at most some ten panels; the sum stops an order that no page could wait for.
        long pieces = (order.Cushions ?? []).Sum(cushion => 10L * (cushion?.Quantity ?? 1)) + (order.Pieces ?? []).Sum(piece => (long)(piece?.Quantity ?? 1));
        if (pieces > MostPieces)
        {
            context.Refuse("", "too-many-pieces", $"An order may have at most {MostPieces} pieces, a cushion counting as ten.", new FindingRange(null, MostPieces));
        }
    }

    private static void NamesItsCurrency(Order order, ValidationContext<Order> context)
    {
        if (order.Currency is null && PriceRules.HasAmounts(order))
        {
            context.Refuse(nameof(Order.Currency), "required", "Currency is required when the order has prices.");
        }
    }

    private static void NamesAreDistinct(Order order, ValidationContext<Order> context)
    {
        Distinct(order.Cushions?.Select(cushion => cushion?.Id), nameof(Order.Cushions), "Id");
        Distinct(order.Pieces?.Select(piece => piece?.Id), nameof(Order.Pieces), "Id");
        Distinct(order.Fabrics?.Select(fabric => fabric?.Id), nameof(Order.Fabrics), "Id");
        Distinct(order.Stocks?.Select(stock => stock?.Id), nameof(Order.Stocks), "Id");
        Distinct(order.Prices?.Select(price => price?.Item), nameof(Order.Prices), "Item");

        void Distinct(IEnumerable<string?>? names, string list, string field)
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            foreach ((int index, string? name) in (names ?? []).Index())
            {
                if (name is not null && !seen.Add(name))
                {
                    context.Refuse($"{list}[{index}].{field}", "duplicate", $"{field} {name} stands twice in {FieldNames.Json(list)}.");
                }
            }
        }
    }

    private static void FabricsAreKnown(Order order, ValidationContext<Order> context)
    {
        if (order.Fabrics is not { Count: > 0 } fabrics)
        {
            return;
        }

        HashSet<string?> known = [.. fabrics.Select(fabric => fabric?.Id)];
        var used = new HashSet<string?>(StringComparer.Ordinal);
        string? only = context.Reading().OnlyFabric;
        foreach ((int i, Cushion? cushion) in (order.Cushions ?? []).Index())
        {
            string at = $"{nameof(Order.Cushions)}[{i}].{nameof(Cushion.Fabrics)}";
            if (cushion is { Fabrics: null })
            {
                Use(only, at, "Fabrics", required: true);
            }

            Use(cushion?.Fabrics?.Top, $"{at}.Top", "Top");
            Use(cushion?.Fabrics?.Bottom, $"{at}.Bottom", "Bottom");
            Use(cushion?.Fabrics?.Sides, $"{at}.Sides", "Sides");
            Use(cushion?.Ties?.Fabric, $"{nameof(Order.Cushions)}[{i}].{nameof(Cushion.Ties)}.Fabric", "Fabric");
            Use(cushion?.Straps?.Fabric, $"{nameof(Order.Cushions)}[{i}].{nameof(Cushion.Straps)}.Fabric", "Fabric");
            Use(cushion?.Pocket?.Fabric, $"{nameof(Order.Cushions)}[{i}].{nameof(Cushion.Pocket)}.Fabric", "Fabric");
            Use(cushion?.Edging?.Fabric, $"{nameof(Order.Cushions)}[{i}].{nameof(Cushion.Edging)}.Fabric", "Fabric");
            Use(cushion?.InnerCover?.Fabric, $"{nameof(Order.Cushions)}[{i}].{nameof(Cushion.InnerCover)}.Fabric", "Fabric");
            Use(cushion?.Handle?.Fabric, $"{nameof(Order.Cushions)}[{i}].{nameof(Cushion.Handle)}.Fabric", "Fabric");
        }

        foreach ((int i, LoosePiece? piece) in (order.Pieces ?? []).Index())
        {
            Use(piece?.Fabric ?? only, $"{nameof(Order.Pieces)}[{i}].Fabric", "Fabric", required: piece is not null);
            Fabric? cloth = fabrics.FirstOrDefault(fabric => fabric?.Id is { } id && id == (piece?.Fabric ?? only));
            if (cloth is { OneWay: true } && piece?.Rotation is not null and not Nesting.Rotations.None)
            {
                context.Warn($"{nameof(Order.Pieces)}[{i}].Rotation", "one-way-cloth", $"The piece is laid as it is drawn: nothing is turned on the one-way cloth {cloth.Id}.");
            }
        }

        foreach ((int i, Fabric? fabric) in fabrics.Index())
        {
            if (fabric?.Id is { } id && !used.Contains(id))
            {
                context.Warn($"{nameof(Order.Fabrics)}[{i}]", "unused-fabric", $"Nothing is made of the cloth {id}.");
            }
        }

        void Use(string? name, string at, string field, bool required = false)
        {
            used.Add(name);
            if (name is null && required)
            {
                context.Refuse(at, "required", $"{field} is required when the order has several cloths.");
            }
            else if (name is not null && !known.Contains(name))
            {
                context.Refuse(at, "unknown-fabric", $"{field} names the cloth {name}, which the order does not have.");
            }
        }
    }

    private static void PricesAreUsed(Order order, ValidationContext<Order> context)
    {
        HashSet<string?> fabrics = [.. (order.Fabrics ?? []).Select(fabric => fabric?.Id)];
        foreach ((int i, ItemPrice? price) in (order.Prices ?? []).Index())
        {
            if (price?.Item is { } item && fabrics.Contains(item))
            {
                context.Refuse($"{nameof(Order.Prices)}[{i}].Item", "duplicate", $"The price of the cloth {item} stands with the cloth.");
            }
        }
    }
}
