using CushionService.Contract.Orders;
using CushionService.Intake;

namespace CushionService.PriceBooks;

/// <summary>The rules of a price book: those of an order's prices, stocks and costing.</summary>
internal sealed class PriceBookValidator : RecordValidator<PriceBookFile>
{
    public PriceBookValidator()
        : base(
            AttributeRules.Of<PriceBookFile>(),
            Rules.Entries(nameof(PriceBookFile.Prices), (PriceBookFile book) => book.Prices, new ItemPriceValidator()),
            Rules.Entries(nameof(PriceBookFile.Stocks), (PriceBookFile book) => book.Stocks, new StockValidator()),
            Rules.Part(nameof(PriceBookFile.Costing), (PriceBookFile book) => book.Costing, new CostingValidator()),
            (book, findings) =>
            {
                Distinct(book.Prices?.Select(price => price.Item), nameof(PriceBookFile.Prices), nameof(ItemPrice.Item), findings);
                Distinct(book.Stocks?.Select(stock => stock.Id), nameof(PriceBookFile.Stocks), nameof(Stock.Id), findings);
                StockRules.UnitsAgree(book.Stocks, book.Prices, nameof(PriceBookFile.Prices), findings);
            }
        ) { }

    private static void Distinct(IEnumerable<string?>? names, string list, string field, Findings findings)
    {
        HashSet<string> seen = [];
        foreach ((int index, string? name) in (names ?? []).Index())
        {
            if (name is not null && !seen.Add(name))
            {
                findings.Refuse($"{list}[{index}].{field}", "duplicate", $"{field} {name} stands twice in {FieldNames.Json(list)}.");
            }
        }
    }
}
