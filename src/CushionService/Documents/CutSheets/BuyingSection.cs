using CushionService.Contract.Answers;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;

namespace CushionService.Documents.CutSheets;

/// <summary>What to buy: the cloth by the yard and by the metre side by side, then everything else.</summary>
internal static class BuyingSection
{
    public static void Add(Html html, QuoteAnswer quote)
    {
        html.Add($"""<section><h2>What to buy</h2>""");
        html.Add($"""<table><caption>Cloth</caption><thead><tr><th scope="col">Cloth</th><th scope="col">Buy</th><th scope="col">Yards</th><th scope="col">Metres</th><th scope="col">Could it be less?</th><th scope="col">Why</th></tr></thead><tbody>""");
        foreach (YardageLine line in quote.Yardage)
        {
            html.Add($"""<tr><th scope="row">{line.Fabric}</th><td class="big">{SaleText.Of(line.SoldLength, line.SoldUnit)}</td>""");
            html.Add($"""<td class="number">{SaleText.As(LengthUnit.Yard, line.SoldLength, line.SoldUnit)}</td><td class="number">{SaleText.As(LengthUnit.Metre, line.SoldLength, line.SoldUnit)}</td>""");
            html.Add($"""<td>{(line.ProvenMinimal ? "no, proven" : "not proven")}</td><td class="why">{line.Because}</td></tr>""");
        }

        html.Add($"""</tbody></table>""");
        AddMaterials(html, [.. quote.Materials.Where(material => material.Kind != MaterialKind.Fabric)]);
        html.Add($"""</section>""");
    }

    private static void AddMaterials(Html html, List<MaterialAnswer> materials)
    {
        if (materials.Count == 0)
        {
            return;
        }

        html.Add($"""<table><caption>Everything else</caption><thead><tr><th scope="col">Item</th><th scope="col">Kind</th><th scope="col">Buy</th><th scope="col">Why</th></tr></thead><tbody>""");
        foreach (MaterialAnswer material in materials)
        {
            html.Add($"""<tr><th scope="row">{material.Item}</th><td>{KindText.Of(material.Kind)}</td><td class="big">{SaleText.Of(material.Quantity, material.Unit)}</td><td class="why">{material.Because}</td></tr>""");
        }

        html.Add($"""</tbody></table>""");
    }
}
