using CushionService.Contract.Orders;

namespace CushionService.Intake;

/// <summary>The rules of a fabric's price.</summary>
internal sealed class PriceValidator : RecordValidator<Price>
{
    public PriceValidator()
        : base(
            AttributeRules.Of<Price>(),
            Rules.Entries(nameof(Price.Breaks), (Price price) => price.Breaks, new AttributeValidator<PriceBreak>()),
            (price, findings) => PriceRules.Rise(price.Breaks, findings)
        ) { }
}
