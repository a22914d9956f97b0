using CushionService.Contract.Answers;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Documents.CutSheets;

/// <summary>What to buy: the fabric by the yard and by the metre side by side, then everything else.</summary>
internal static class BuyingSection
{
    public static void Add(Html html, QuoteAnswer quote)
    {
        html.Add($"""<section><h2>What to buy</h2>""");
        HtmlTable.Open(html, "", "Fabric", "Fabric", "Buy", "Yards", "Metres", "Could it be less?", "Why");
        foreach (YardageLine line in quote.Yardage)
        {
            html.Add(
                $"""<tr><th scope="row">{line.Label ?? line.Fabric}</th><td class="big">{SaleText.Of(line.SoldLength, line.SoldUnit)}</td>"""
            );
            html.Add(
                $"""<td class="number">{SaleText.As(LengthUnit.Yard, line.SoldLength, line.SoldUnit)}</td><td class="number">{SaleText.As(LengthUnit.Metre, line.SoldLength, line.SoldUnit)}</td>"""
            );
            html.Add($"""<td>{(line.ProvenMinimal ? "no, proven" : "not proven")}</td><td class="why">{line.Because}</td></tr>""");
        }

        HtmlTable.Close(html);
        AddMaterials(html, [.. quote.Materials.Where(material => material.Kind != MaterialKind.Fabric)]);
        html.Add($"""</section>""");
    }

    private static void AddMaterials(Html html, List<MaterialAnswer> materials)
    {
        if (materials.Count == 0)
        {
            return;
        }

        HtmlTable.Open(html, "", "Everything else", "Item", "Kind", "Buy", "Why");
        foreach (MaterialAnswer material in materials)
        {
            html.Add(
                $"""<tr><th scope="row">{material.Label ?? material.Item}</th><td class="word">{KindText.Of(material.Kind)}</td><td class="big">{SaleText.Of(material.Quantity, material.Unit)}</td><td class="why">{material.Because}</td></tr>"""
            );
        }

        HtmlTable.Close(html);
    }
}
