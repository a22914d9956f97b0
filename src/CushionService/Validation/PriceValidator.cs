using CushionService.Contract.Orders;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of a cloth's price.</summary>
internal sealed class PriceValidator : AbstractValidator<Price>
{
    public PriceValidator()
    {
        this.AddAttributeRules();
        RuleForEach(price => price.Breaks).SetValidator(new AttributeValidator<PriceBreak>());
        RuleFor(price => price).Custom((price, context) => PriceRules.Rise(price.Breaks, context));
    }
}
