using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>The rules of a stock: the sizes that its kind has, and how it is sold.</summary>
internal sealed class StockValidator : RecordValidator<Stock>
{
    public StockValidator()
        : base(
            AttributeRules.Of<Stock>(),
            Rules.Part(nameof(Stock.Sold), (Stock stock) => stock.Sold, new StockSaleValidator()),
            (stock, findings) =>
            {
                if (stock.Kind is not { } kind || !Enum.IsDefined(kind))
                {
                    return;
                }

                if (StockReading.Fields(kind) is not { } fields)
                {
                    findings.Refuse(nameof(Stock.Kind), "not-combinable", "Fabric stands in fabrics, not in stocks.");
                    return;
                }

                string word = CushionValidator.Json(kind);
                foreach (string field in StockReading.AllFields.Where(field => !fields.Contains(field) && IsGiven(stock, field)))
                {
                    findings.Refuse(field, "not-applicable", $"{FieldNames.Words(field)} does not apply to stock of kind {word}.");
                }

                foreach (string field in StockReading.Required(stock).Where(field => !IsGiven(stock, field)))
                {
                    findings.Refuse(field, "required", $"{FieldNames.Words(field)} is required for stock of kind {word} that is sold so.");
                }

                if (stock.Sold?.Unit is { } unit && Enum.IsDefined(unit) && StockReading.Units(stock) is var units && !units.Contains(unit))
                {
                    findings.Refuse(
                        "Sold.Unit",
                        "not-combinable",
                        $"Stock of kind {word} with these sizes is sold by {string.Join(", ", units.Select(one => CushionValidator.Json(one)))}."
                    );
                }

                // Density is no measure of firmness: neither is given without the other (PFA InTouch, volume 4, number 3).
                if (kind == MaterialKind.Foam && (stock.Density is null) != (stock.Firmness is null))
                {
                    string missing = stock.Density is null ? nameof(Stock.Density) : nameof(Stock.Firmness);
                    findings.Warn(
                        missing,
                        "foam-half-described",
                        "Density says nothing of firmness, nor firmness of density: a foam needs both to be chosen by."
                    );
                }
            }
        ) { }

    private static bool IsGiven(Stock stock, string field) =>
        field switch
        {
            nameof(Stock.Width) => stock.Width is not null,
            nameof(Stock.Length) => stock.Length is not null,
            nameof(Stock.Thickness) => stock.Thickness is not null,
            nameof(Stock.Diameter) => stock.Diameter is not null,
            nameof(Stock.Density) => stock.Density is not null,
            nameof(Stock.Firmness) => stock.Firmness is not null,
            nameof(Stock.SupportFactor) => stock.SupportFactor is not null,
            nameof(Stock.Weight) => stock.Weight is not null,
            nameof(Stock.Coverage) => stock.Coverage is not null,
            _ => throw new ArgumentOutOfRangeException(nameof(field)),
        };

    private sealed class StockSaleValidator : RecordValidator<StockSale>
    {
        public StockSaleValidator()
            : base(
                AttributeRules.Of<StockSale>(),
                (sale, findings) =>
                {
                    if (sale is { Unit: SaleUnit.Each, Step: { } step } && step != Math.Truncate(step))
                    {
                        findings.Refuse(
                            nameof(StockSale.Step),
                            "out-of-range",
                            "What is sold each comes in whole steps, at least 1.",
                            new FindingRange(1, null)
                        );
                    }
                }
            ) { }
    }
}
