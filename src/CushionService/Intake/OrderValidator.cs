using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Messages;
using FluentValidation;

namespace CushionService.Intake;

/// <summary>The rules of an order as a whole, which its parts cannot be checked for by themselves.</summary>
/// <remarks>Three kinds of rules: no list has a gap, no two things have one name, and the whole is neither empty nor too large. Each has
/// its message by <see cref="RuleExtensions.WithDetail"/>; FluentValidation's own sentences are not used.</remarks>
internal sealed class OrderValidator : AbstractValidator<Order>
{
    // Bounds the time and the memory of one order; a cushion counts as ten pieces.
    private const int MostPieces = 10_000;

    /// <summary>The rules. One validator serves every order: it keeps nothing of them.</summary>
    public OrderValidator()
    {
        // JSON lets a list hold null, which the other rules pass over.
        RuleForEach(order => order.Cushions).NotNull().WithErrorCode("required").WithDetail(Gap(nameof(Order.Cushions)));
        RuleForEach(order => order.Bays).NotNull().WithErrorCode("required").WithDetail(Gap(nameof(Order.Bays)));
        RuleForEach(order => order.Rows).NotNull().WithErrorCode("required").WithDetail(Gap(nameof(Order.Rows)));
        RuleForEach(order => order.Pieces).NotNull().WithErrorCode("required").WithDetail(Gap(nameof(Order.Pieces)));
        RuleForEach(order => order.Fabrics).NotNull().WithErrorCode("required").WithDetail(Gap(nameof(Order.Fabrics)));
        RuleForEach(order => order.Stocks).NotNull().WithErrorCode("required").WithDetail(Gap(nameof(Order.Stocks)));
        RuleForEach(order => order.Prices).NotNull().WithErrorCode("required").WithDetail(Gap(nameof(Order.Prices)));
        RuleForEach(order => order.Lines).NotNull().WithErrorCode("required").WithDetail(Gap(nameof(Order.Lines)));
        RuleForEach(order => order.Candidates).NotNull().WithErrorCode("required").WithDetail(Gap(nameof(Order.Candidates)));

        // The answer names its pieces, fabrics and prices by these, and would be ambiguous.
        RuleFor(order => order.Cushions).Distinct(cushion => cushion?.Id, nameof(Cushion.Id));
        RuleFor(order => order.Bays).Distinct(bay => bay?.Id, nameof(Bay.Id));
        RuleFor(order => order.Rows).Distinct(row => row?.Id, nameof(Row.Id));
        RuleFor(order => order.Pieces).Distinct(piece => piece?.Id, nameof(LoosePiece.Id));
        RuleFor(order => order.Fabrics).Distinct(fabric => fabric?.Id, nameof(Fabric.Id));
        RuleFor(order => order.Stocks).Distinct(stock => stock?.Id, nameof(Stock.Id));
        RuleFor(order => order.Prices).Distinct(price => price?.Item, nameof(ItemPrice.Item));

        // What the whole must be: something, and no more than the service takes on at once.
        RuleFor(order => order)
            .Must(order => order.Cushions is { Count: > 0 } || order.Bays is { Count: > 0 } || order.Pieces is { Count: > 0 })
            .WithErrorCode("empty-order")
            .WithDetail(OrderTexts.Empty);
        RuleFor(order => order)
            .Must(order => OrderSize.Pieces(order) <= MostPieces)
            .WithErrorCode("too-many-pieces")
            .WithDetail(OrderTexts.TooManyPieces(MostPieces), new FindingRange(null, MostPieces));
        // A costing in percent needs no currency.
        RuleFor(order => order.Currency)
            .NotNull()
            .When(OwnPrices.HasAmounts)
            .WithErrorCode("required")
            .WithDetail(OrderTexts.CurrencyRequired);

        // Fabrics, stocks and priced items share the basket, where each name is one line.
        RuleFor(order => order.Stocks).Custom(NamesAFabric);
        RuleFor(order => order.Prices).Custom(PricesAFabric);
    }

    // What is said of a null in a list.
    private static Message Gap(string list) => FieldTexts.NullEntry(FieldNames.Json(list));

    private static void NamesAFabric(IReadOnlyList<Stock>? stocks, ValidationContext<Order> context)
    {
        Order order = context.InstanceToValidate;
        foreach ((int i, Stock? stock) in (stocks ?? []).Index())
        {
            if (stock?.Id is { } id && IsFabric(order, id))
            {
                context.Refuse($"Stocks[{i}].Id", "duplicate", OrderTexts.StockNamedAsFabric(id));
            }
        }
    }

    private static void PricesAFabric(IReadOnlyList<ItemPrice>? prices, ValidationContext<Order> context)
    {
        Order order = context.InstanceToValidate;
        foreach ((int i, ItemPrice? price) in (prices ?? []).Index())
        {
            if (price?.Item is { } item && IsFabric(order, item))
            {
                context.Refuse($"Prices[{i}].Item", "duplicate", OrderTexts.PriceOfFabric(item));
            }
        }
    }

    private static bool IsFabric(Order order, string id) => order.Fabrics?.Any(fabric => fabric?.Id == id) == true;
}
