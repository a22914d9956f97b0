using System.Text;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Documents;
using CushionService.Documents.Exchange;
using CushionService.Engine.Measures;
using CushionService.Json;

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

    // OWASP, CSV injection: what begins with =, +, - or @ is a formula to a spreadsheet.
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData(" -1+2", "' -1+2")]
    [InlineData("+49 30 1", "'+49 30 1")]
    [InlineData("-5.00", "-5.00")]
    [InlineData("1E-05", "1E-05")]
    [InlineData("bench = top", "bench = top")]
    [InlineData("bench;=1+1", "\"bench;=1+1\"")] // a spreadsheet whose decimal sign is a comma divides at semicolons
    public void No_text_runs_as_a_formula_in_a_spreadsheet(string text, string cell)
    {
        var table = new CsvTable("label");
        table.Add(text);
        Assert.Equal($"label\r\n{cell}\r\n", table.ToString());
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
                string bought = $",{CsvTable.Number(cost.Quantity)},{Words<SaleUnit>.Of(cost.Unit)},{cost.UnitPrice},{cost.CutFee},";
                Assert.Contains(lines, line => line.Contains($"{bought}{cost.Amount},", StringComparison.Ordinal));
            }
        }
    }

    // 22 buttons for tufts and 4 for a flap, one item at 1.20 (follows from the arithmetic).
    [Fact]
    public void An_item_that_is_bought_for_two_cushions_has_the_amount_of_each_line()
    {
        string order = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Demo", "trimmings.json"));
        ReceivedOrder received = OrderText.Parse(Encoding.UTF8.GetBytes(order));
        QuoteAnswer quote = new OrderDesk().Handle(received, Purposes.Quote, CancellationToken.None).Answer!;

        string list = BuyingList.Write(quote);
        Assert.Contains("buttons,,button,22,each,1.20,,26.40,", list, StringComparison.Ordinal);
        Assert.Contains("buttons,,button,4,each,1.20,,4.80,", list, StringComparison.Ordinal);
        Assert.Equal("4.80", quote.Cost.LineOf("buttons", 4, SaleUnit.Each)!.Amount);
    }

    [Fact]
    public void The_placements_have_a_line_for_each_copy_of_each_piece()
    {
        foreach ((_, QuoteAnswer quote) in Scenarios.All)
        {
            var layouts = new LayoutsAnswer
            {
                Units = quote.Units,
                Engine = quote.Engine,
                Layouts = quote.Layouts,
                Pieces = quote.Pieces,
                Warnings = [],
            };
            string[] lines = PlacementsTable.Write(layouts).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
            Assert.Equal(1 + quote.Pieces.Sum(piece => piece.Quantity), lines.Length);
            Assert.Equal(lines.Length, lines.Distinct().Count());
        }
    }
}
