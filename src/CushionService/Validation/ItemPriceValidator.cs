using CushionService.Contract.Orders;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of an item's price.</summary>
internal sealed class ItemPriceValidator : AbstractValidator<ItemPrice>
{
    public ItemPriceValidator()
    {
        this.AddAttributeRules();
        RuleForEach(price => price.Breaks).SetValidator(new AttributeValidator<PriceBreak>());
        RuleFor(price => price).Custom((price, context) => PriceRules.Rise(price.Breaks, context));
    }
}
