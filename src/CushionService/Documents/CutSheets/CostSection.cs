using System.Globalization;
using CushionService.Contract.Answers;
using CushionService.Engine.Measures;

namespace CushionService.Documents.CutSheets;

/// <summary>What the order costs and each cushion's share of it, tax left out and said so.</summary>
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
            html.Add(
                $"""<tr><th scope="row">{line.Label ?? line.Item}</th><td class="number">{SaleText.Of(line.Quantity, line.Unit)}</td><td class="number">{line.UnitPrice} a {UnitName(line.Unit)}{(line.CutFee is { } fee ? $" + {fee} to cut" : "")}</td><td class="number">{line.Amount}</td></tr>"""
            );
        }

        foreach (LabourLineAnswer line in cost.Labour)
        {
            html.Add(
                $"""<tr><th scope="row">{line.Cushion}: {line.Operation}</th><td class="number">{line.Times} ×</td><td class="number">{line.Minutes.ToString("0.##", CultureInfo.InvariantCulture)} min</td><td class="number">{line.Amount}</td></tr>"""
            );
        }

        foreach (CostAdditionAnswer addition in cost.Additions)
        {
            html.Add(
                $"""<tr><th scope="row">{addition.Label ?? KindText.Of(addition.Kind)}</th><td colspan="2">{addition.Because}</td><td class="number">{addition.Amount}</td></tr>"""
            );
        }

        html.Add($"""<tr class="total"><th scope="row" colspan="3">Total, tax {cost.Tax}</th><td class="number">{cost.Total}</td></tr>""");
        HtmlTable.Close(html);
        AddShares(html, cost);
        AddGroups(html, cost);
        if (cost.Unpriced.Count > 0)
        {
            html.Add($"""<p class="notice">Not in the total, for want of a price: {string.Join(", ", cost.Unpriced)}.</p>""");
        }

        html.Add($"""</section>""");
    }

    private static void AddShares(Html html, CostAnswer cost)
    {
        if (cost.Shares.Count < 2)
        {
            return;
        }

        HtmlTable.Open(html, "", "", "Of the total", "Quantity", $"Amount, {cost.Currency}");
        foreach (CostShareAnswer share in cost.Shares)
        {
            html.Add(
                $"""<tr><th scope="row">{share.Cushion ?? "own pieces"}</th><td class="number">{share.Quantity}</td><td class="number">{share.Amount}</td></tr>"""
            );
        }

        HtmlTable.Close(html);
    }

    private static void AddGroups(Html html, CostAnswer cost)
    {
        if (cost.Groups.Count == 0)
        {
            return;
        }

        HtmlTable.Open(html, "", "", "Of the total", "Cushions", $"Amount, {cost.Currency}");
        foreach (CostGroupAnswer group in cost.Groups)
        {
            html.Add($"""<tr><th scope="row">{group.Group ?? "without a group"}</th><td class="number">{group.Quantity}</td>""");
            html.Add($"""<td class="number">{group.Amount}</td></tr>""");
        }

        HtmlTable.Close(html);
    }

    private static string UnitName(SaleUnit unit) =>
        unit switch
        {
            SaleUnit.Yd => "yard",
            SaleUnit.M => "metre",
            SaleUnit.Lb => "pound",
            SaleUnit.Kg => "kilogram",
            SaleUnit.SqYd => "square yard",
            SaleUnit.SqM => "square metre",
            _ => "piece",
        };
}
