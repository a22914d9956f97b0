using System.Text;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Desk;
using CushionService.Documents;
using CushionService.Json;

namespace CushionService.Tests.Pages;

/// <summary>The page on materials quotes the basket of the reading nook's order, and it is the one that the service answers.</summary>
public sealed class BasketTests
{
    private static readonly QuoteAnswer Nook = new OrderDesk()
        .Handle(
            OrderText.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Demo", "reading-nook.json"))),
            Purposes.Quote,
            CancellationToken.None
        )
        .Answer!;

    [Fact]
    public void The_page_quotes_the_basket_that_the_service_answers() =>
        WrittenPart.IsUpToDate("src/CushionService/docs/basket.md", "basket", Table());

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
            Nook.Materials.Select(material => Words<Engine.Specifications.Stocks.MaterialKind>.Of(material.Kind))
        );
    }

    private static string Table()
    {
        var table = new StringBuilder("| item | quantity | unit | how it comes about | price | amount |\n|---|---|---|---|---|---|\n");
        foreach ((MaterialAnswer material, CostLineAnswer line) in Nook.Materials.Zip(Nook.Cost!.Lines))
        {
            string unit = Words<Engine.Measures.SaleUnit>.Of(material.Unit);
            table.Append(
                $"| {material.Item} | {SaleText.Of(material.Quantity, material.Unit).Replace('\u00A0', ' ')} | {unit} "
                    + $"| {material.Because} | {line.UnitPrice} | {line.Amount} |\n"
            );
        }

        return table.Append($"| total, tax {Nook.Cost.Tax} | | | | | {Nook.Cost.Total} {Nook.Cost.Currency} |\n").ToString();
    }
}
