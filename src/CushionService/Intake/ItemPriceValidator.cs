using CushionService.Contract.Orders;

namespace CushionService.Intake;

/// <summary>The rules of an item's price.</summary>
internal sealed class ItemPriceValidator : RecordValidator<ItemPrice>
{
    public ItemPriceValidator()
        : base(
            AttributeRules.Of<ItemPrice>(),
            Rules.Entries(nameof(ItemPrice.Breaks), (ItemPrice price) => price.Breaks, new AttributeValidator<PriceBreak>()),
            (price, findings) => PriceRules.Rise(price.Breaks, findings)
        ) { }
}
