using CushionService.Contract.Orders;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of a cloth's price.</summary>
internal sealed class PriceValidator : AbstractValidator<Price>
{
    public PriceValidator()
    {
        this.AddRules(
            AttributeRules.Of<Price>(),
            Rules.Entries(nameof(Price.Breaks), (Price price) => price.Breaks, new AttributeValidator<PriceBreak>()),
            (price, context) => PriceRules.Rise(price.Breaks, context));
    }
}
