using CushionService.Contract;
using CushionService.Contract.Orders;
using FluentValidation;
using FluentValidation.Results;

namespace CushionService.Intake;

/// <summary>The rules of an order as a whole, which its parts cannot be checked for by themselves.</summary>
internal sealed class OrderValidator : AbstractValidator<Order>
{
    private const int MostPieces = 10_000;

    public OrderValidator()
    {
        RuleForEach(order => order.Cushions).NotNull().WithErrorCode("required").WithMessage(Gap(nameof(Order.Cushions)));
        RuleForEach(order => order.Rows).NotNull().WithErrorCode("required").WithMessage(Gap(nameof(Order.Rows)));
        RuleForEach(order => order.Pieces).NotNull().WithErrorCode("required").WithMessage(Gap(nameof(Order.Pieces)));
        RuleForEach(order => order.Fabrics).NotNull().WithErrorCode("required").WithMessage(Gap(nameof(Order.Fabrics)));
        RuleForEach(order => order.Stocks).NotNull().WithErrorCode("required").WithMessage(Gap(nameof(Order.Stocks)));
        RuleForEach(order => order.Prices).NotNull().WithErrorCode("required").WithMessage(Gap(nameof(Order.Prices)));
        RuleForEach(order => order.Candidates).NotNull().WithErrorCode("required").WithMessage(Gap(nameof(Order.Candidates)));

        RuleFor(order => order.Cushions).Distinct(cushion => cushion?.Id, nameof(Cushion.Id));
        RuleFor(order => order.Rows).Distinct(row => row?.Id, nameof(Row.Id));
        RuleFor(order => order.Pieces).Distinct(piece => piece?.Id, nameof(LoosePiece.Id));
        RuleFor(order => order.Fabrics).Distinct(fabric => fabric?.Id, nameof(Fabric.Id));
        RuleFor(order => order.Stocks).Distinct(stock => stock?.Id, nameof(Stock.Id));
        RuleFor(order => order.Prices).Distinct(price => price?.Item, nameof(ItemPrice.Item));

        RuleFor(order => order)
            .Must(order => order.Cushions is { Count: > 0 } || order.Pieces is { Count: > 0 })
            .WithErrorCode("empty-order")
            .WithMessage("An order needs at least one cushion or piece.");
        RuleFor(order => order)
            .Must(order => OrderSize.Pieces(order) <= MostPieces)
            .WithErrorCode("too-many-pieces")
            .WithMessage($"An order may have at most {MostPieces} pieces, a cushion counting as ten. Send it in parts.")
            .WithState(_ => new FindingRange(null, MostPieces));
        RuleFor(order => order.Currency)
            .NotNull()
            .When(OwnPrices.HasAmounts)
            .WithErrorCode("required")
            .WithMessage("Currency is required when the order has prices.");

        RuleFor(order => order.Stocks).Custom(NamesAFabric);
        RuleFor(order => order.Prices).Custom(PricesAFabric);
    }

    private static string Gap(string list) => $"An entry of {FieldNames.Json(list)} may not be null. Leave it out.";

    private static void NamesAFabric(IReadOnlyList<Stock>? stocks, ValidationContext<Order> context)
    {
        Order order = context.InstanceToValidate;
        foreach ((int i, Stock? stock) in (stocks ?? []).Index())
        {
            if (stock?.Id is { } id && IsFabric(order, id))
            {
                context.AddFailure(Duplicate($"Stocks[{i}].Id", $"Id {id} is already the id of a fabric. Choose another."));
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
                context.AddFailure(Duplicate($"Prices[{i}].Item", $"Item {item} is a fabric. Give its price in fabrics."));
            }
        }
    }

    private static bool IsFabric(Order order, string id) => order.Fabrics?.Any(fabric => fabric?.Id == id) == true;

    private static ValidationFailure Duplicate(string path, string detail) => new(path, detail) { ErrorCode = "duplicate" };
}
