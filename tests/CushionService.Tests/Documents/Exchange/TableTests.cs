using CushionService.Contract.Answers;
using CushionService.Documents.Exchange;

namespace CushionService.Tests.Documents.Exchange;

/// <summary>Tables as RFC 4180 has them.</summary>
public sealed class TableTests
{
    [Fact]
    public void Cells_with_commas_and_quotes_are_quoted_and_lines_end_in_CR_LF()
    {
        var table = new CsvTable("item", "because");
        table.Add("piping \"thin\"", "1, 2");
        table.Add("two\nlines", null);
        Assert.Equal("item,because\r\n\"piping \"\"thin\"\"\",\"1, 2\"\r\ntwo lines,\r\n", table.ToString());
    }

    [Fact]
    public void The_buying_list_has_a_line_for_each_fabric_and_each_other_material()
    {
        foreach ((_, QuoteAnswer quote) in Scenarios.All)
        {
            string[] lines = BuyingList.Write(quote).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
            Assert.Equal(
                1 + quote.Yardage.Count + quote.Materials.Count(m => m.Kind != Engine.Specifications.Stocks.MaterialKind.Fabric),
                lines.Length
            );
            foreach (CostLineAnswer cost in quote.Cost?.Lines ?? [])
            {
                Assert.Contains(lines, line => line.Contains($"{cost.UnitPrice},{cost.CutFee},{cost.Amount}", StringComparison.Ordinal));
            }
        }
    }
}
