using System.Text;
using System.Text.Json;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Documents;
using CushionService.Rest;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Orders;

/// <summary>The page on materials quotes the basket of the reading nook's order, and it is the one that the service answers.</summary>
public sealed class BasketTests
{
    private const string Start = "<!-- basket: made by BasketTests; set CUSHION_WRITE_TABLE=1 and run it to write it anew -->";
    private const string End = "<!-- end of basket -->";

    private static readonly QuoteAnswer Nook = new OrderDesk()
        .Quote(
            JsonSerializer.Deserialize<Order>(
                File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Demo", "reading-nook.json")),
                Json.Options
            )!,
            CancellationToken.None
        )
        .Answer!;

    [Fact]
    public void The_page_quotes_the_basket_that_the_service_answers()
    {
        string page = Path.Combine(Repository.Root, "src", "CushionService", "docs", "basket.md"),
            text = File.ReadAllText(page),
            table = Table();
        int from = text.IndexOf(Start, StringComparison.Ordinal) + Start.Length,
            to = text.IndexOf(End, StringComparison.Ordinal);
        Assert.True(from > Start.Length && to >= from, "The page has no place for the basket.");
        if (Environment.GetEnvironmentVariable("CUSHION_WRITE_TABLE") == "1")
        {
            File.WriteAllText(page, text[..from] + table + text[to..]);
        }
        else
        {
            Assert.Equal(table, text[from..to]);
        }
    }

    [Fact]
    public void Every_line_has_an_item_of_its_own_a_reason_and_a_price()
    {
        Assert.Equal(Nook.Materials.Count, Nook.Materials.Select(material => material.Item).Distinct().Count());
        Assert.Equal(
            Nook.Materials.Select(material => (material.Item, material.Quantity)),
            Nook.Cost!.Lines.Select(line => (line.Item, line.Quantity))
        );
        Assert.All(Nook.Materials, material => Assert.NotEmpty(material.Because));
        Assert.Equal(
            ["fabric", "fabric", "foam", "batting", "foam", "adhesive", "loose-fill", "zipper", "slider", "hook-and-loop-tape", "thread"],
            Nook.Materials.Select(material => Words<Engine.Specifications.Pricing.MaterialKind>.Of(material.Kind))
        );
    }

    private static string Table()
    {
        var table = new StringBuilder("\n| item | quantity | unit | how it comes about | price | amount |\n|---|---|---|---|---|---|\n");
        foreach ((MaterialAnswer material, CostLineAnswer line) in Nook.Materials.Zip(Nook.Cost!.Lines))
        {
            string unit = Words<Engine.Measures.SaleUnit>.Of(material.Unit);
            table.Append(
                $"| {material.Item} | {SaleText.Of(material.Quantity, material.Unit).Replace('\u00A0', ' ')} | {unit} | {material.Because} | {line.UnitPrice} | {line.Amount} |\n"
            );
        }

        return table.Append($"| total, tax {Nook.Cost.Tax} | | | | | {Nook.Cost.Total} {Nook.Cost.Currency} |\n").ToString();
    }
}
