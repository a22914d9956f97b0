using CushionService.Contract.Orders;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of an item's price.</summary>
internal sealed class ItemPriceValidator : AbstractValidator<ItemPrice>
{
    public ItemPriceValidator()
    {
        this.AddRules(
            AttributeRules.Of<ItemPrice>(),
            Rules.Entries(nameof(ItemPrice.Breaks), (ItemPrice price) => price.Breaks, new AttributeValidator<PriceBreak>()),
            (price, context) => PriceRules.Rise(price.Breaks, context));
    }
}
