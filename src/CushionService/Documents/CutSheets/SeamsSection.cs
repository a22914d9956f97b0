using CushionService.Contract.Answers;

namespace CushionService.Documents.CutSheets;

/// <summary>What is sewn to what, over which finished length: the workroom's check sums.</summary>
internal static class SeamsSection
{
    public static void Add(Html html, SheetContext sheet)
    {
        if (sheet.Quote.Seams.Count == 0)
        {
            return;
        }

        html.Add($"""<section><h2>Seams</h2>""");
        HtmlTable.Open(html, "", "", "Cushion", "Sew", "To", "Finished length");
        foreach (SeamAnswer seam in sheet.Quote.Seams)
        {
            string lap = seam.Lap > 0 ? $", lapped {sheet.Units.Text(seam.Lap)}" : "";
            html.Add(
                $"""<tr><th scope="row">{seam.Cushion}</th><td>{Edges(seam.One)}</td><td>{Edges(seam.Other)}</td><td class="big">{sheet.Units.Text(seam.Length)}{lap}</td></tr>"""
            );
        }

        HtmlTable.Close(html);
        html.Add($"""</section>""");
    }

    private static string Edges(IReadOnlyList<string> edges) => string.Join(" + ", edges);
}
