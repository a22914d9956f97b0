using CushionService.Contract.Orders;
using CushionService.Intake;
using FluentValidation;

namespace CushionService.PriceBooks;

/// <summary>The rules of a price book as a whole, which its parts cannot be checked for by themselves: no item has two
/// prices, and no stock two entries.</summary>
internal sealed class PriceBookValidator : AbstractValidator<PriceBookFile>
{
    /// <summary>Sets the rules. A null in a list has the violation of the same list in an order.</summary>
    public PriceBookValidator()
    {
        RuleForEach(book => book.Prices).NotNull().WithErrorCode("required").WithDetail(FieldTexts.NullEntry("prices"));
        RuleForEach(book => book.Stocks).NotNull().WithErrorCode("required").WithDetail(FieldTexts.NullEntry("stocks"));
        RuleForEach(book => book.Goods).NotNull().WithErrorCode("required").WithDetail(FieldTexts.NullEntry("goods"));
        RuleFor(book => book.Goods).Distinct(good => good?.Item, nameof(Good.Item));
        RuleFor(book => book.Prices).Distinct(price => price?.Item, nameof(ItemPrice.Item));
        RuleFor(book => book.Stocks).Distinct(stock => stock?.Id, nameof(Stock.Id));
    }
}
