using CushionService.Contract.Orders;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of an item's price.</summary>
internal sealed class ItemPriceValidator : AbstractValidator<ItemPrice>
{
    public ItemPriceValidator() => this.AddAttributeRules();
}
