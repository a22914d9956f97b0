using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Documents.Exchange;

/// <summary>What to buy as a table: a line for each fabric and each other material, with its price where there is one.</summary>
internal static class BuyingList
{
    /// <summary>The table.</summary>
    /// <param name="quote">Fabric comes from its yardage, so that the table has what is sold and not what is laid
    /// out.</param>
    /// <returns>Comma-separated values; prices are empty where the quote has none.</returns>
    public static string Write(QuoteAnswer quote)
    {
        var table = new CsvTable("item", "label", "kind", "quantity", "unit", "unitPrice", "cutFee", "amount", "currency", "because");
        foreach (YardageLine line in quote.Yardage)
        {
            Add(line.Fabric, line.Label, Words<MaterialKind>.Of(MaterialKind.Fabric), line.SoldLength, line.SoldUnit, line.Because);
        }

        foreach (MaterialAnswer material in quote.Materials.Where(material => material.Kind != MaterialKind.Fabric))
        {
            Add(material.Item, material.Label, Words<MaterialKind>.Of(material.Kind), material.Quantity, material.Unit, material.Because);
        }

        return table.ToString();

        void Add(string item, string? label, string kind, double quantity, SaleUnit unit, string because)
        {
            CostLineAnswer? cost = quote.Cost.LineOf(item, quantity, unit);
            table.Add(
                item,
                label,
                kind,
                CsvTable.Number(quantity),
                Words<SaleUnit>.Of(unit),
                cost?.UnitPrice,
                cost?.CutFee,
                cost?.Amount,
                cost is null ? null : quote.Cost!.Currency,
                because
            );
        }
    }
}
