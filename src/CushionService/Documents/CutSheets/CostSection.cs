using CushionService.Contract.Answers;
using CushionService.Engine.Measures;

namespace CushionService.Documents.CutSheets;

/// <summary>What the materials cost, tax left out and said so.</summary>
internal static class CostSection
{
    public static void Add(Html html, QuoteAnswer quote)
    {
        if (quote.Cost is not { } cost)
        {
            return;
        }

        html.Add($"""<section><h2>Cost</h2>""");
        HtmlTable.Open(html, "", "", "Item", "Quantity", "Price", $"Amount, {cost.Currency}");
        foreach (CostLineAnswer line in cost.Lines)
        {
            html.Add($"""<tr><th scope="row">{line.Item}</th><td class="number">{SaleText.Of(line.Quantity, line.Unit)}</td><td class="number">{line.UnitPrice} a {UnitName(line.Unit)}</td><td class="number">{line.Amount}</td></tr>""");
        }

        html.Add($"""<tr class="total"><th scope="row" colspan="3">Total, tax {cost.Tax}</th><td class="number">{cost.Total}</td></tr>""");
        HtmlTable.Close(html);
        if (cost.Unpriced.Count > 0)
        {
            html.Add($"""<p class="notice">Not in the total, for want of a price: {string.Join(", ", cost.Unpriced)}.</p>""");
        }

        html.Add($"""</section>""");
    }

    private static string UnitName(SaleUnit unit) => unit switch
    {
        SaleUnit.Yd => "yard",
        SaleUnit.M => "metre",
        SaleUnit.Lb => "pound",
        SaleUnit.Kg => "kilogram",
        _ => "piece",
    };
}
