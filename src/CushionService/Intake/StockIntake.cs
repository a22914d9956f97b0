using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>Checks a stock, and specifies it: the sizes that its kind has, and how it is sold.</summary>
/// <remarks>Densities are in kg/m³, firmness in newtons (ASTM D3574, test B1, at 25 % of indentation), weights in kg, coverage in m² for
/// a unit of sale.</remarks>
internal static class StockIntake
{
    private static readonly LengthField<Stock> Width = RecordForm<Stock>.Length(nameof(Stock.Width)),
        Depth = RecordForm<Stock>.Length(nameof(Stock.Depth)),
        StockLength = RecordForm<Stock>.Length(nameof(Stock.Length)),
        Thickness = RecordForm<Stock>.Length(nameof(Stock.Thickness)),
        Diameter = RecordForm<Stock>.Length(nameof(Stock.Diameter)),
        Oversize = RecordForm<Stock>.Length(nameof(Stock.Oversize));

    /// <summary>The stocks in their order, null for each that was refused.</summary>
    /// <param name="stocks">The stocks as written; null for none.</param>
    /// <param name="list">The property that holds them: of an order, or of a price book.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static StockSpecification?[] Read(IReadOnlyList<Stock?>? stocks, string list, Findings findings)
    {
        var specified = new StockSpecification?[stocks?.Count ?? 0];
        for (int i = 0; i < specified.Length; i++)
        {
            specified[i] = stocks![i] is { } stock ? One(stock, findings.Within(list, i)) : null;
        }

        return specified;
    }

    // One stock; null where it was refused.
    private static StockSpecification? One(Stock stock, Findings findings)
    {
        Fields<Stock> fields = RecordForm<Stock>.Read(stock, findings);
        // Not "and also": both are read in any case, so that everything wrong is reported at once.
        bool sound = fields.IsSound & (stock.Sold is null || IsSold(stock.Sold, findings.Within(nameof(stock.Sold))));
        // Without a kind nothing says which sizes it has.
        if (stock.Kind is not { } kind || !Enum.IsDefined(kind) || !StockFields.Check(stock, kind, findings) || !sound)
        {
            return null;
        }

        // Density is no measure of firmness: neither is given without the other (PFA InTouch, volume 4, number 3).
        if (kind == MaterialKind.Foam && (stock.Density is null) != (stock.Firmness is null))
        {
            string missing = stock.Density is null ? nameof(stock.Density) : nameof(stock.Firmness);
            findings.Warn(missing, "foam-half-described", StockTexts.FoamHalfDescribed);
        }

        // What the contract gives as numbers gets its unit here.
        return new StockSpecification
        {
            Id = stock.Id!,
            Label = stock.Label,
            Kind = kind,
            Width = fields[Width],
            Depth = fields[Depth],
            Length = fields[StockLength],
            Thickness = fields[Thickness],
            Diameter = fields[Diameter],
            Oversize = fields[Oversize],
            Density = (decimal?)stock.Density,
            Firmness = stock.Firmness is { } newtons ? new Force((decimal)newtons) : null,
            SupportFactor = (decimal?)stock.SupportFactor,
            Weight = stock.Weight is { } kilograms ? new Mass((decimal)kilograms * 1000) : null,
            Coverage = (decimal?)stock.Coverage,
            Sold = stock.Sold is { Unit: { } unit } sold
                ? new UnitSale(unit, sold.Step?.Read() ?? UnitSale.UsualStep(unit), sold.Minimum?.Read() ?? 0)
                : null,
        };
    }

    // Whether the rule of sale is sound. Half a zipper is not sold.
    private static bool IsSold(StockSale sale, Findings findings)
    {
        bool sound = RecordForm<StockSale>.Read(sale, findings).IsSound;
        if (sale is { Unit: SaleUnit.Each, Step: { } given } && given.TryRead(out Fraction step) && step.Denominator != 1)
        {
            findings.Refuse(nameof(sale.Step), "out-of-range", StockTexts.WholeSteps, new FindingRange(1, null));
            return false;
        }

        return sound;
    }
}
