using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;
using CushionService.Nesting;

namespace CushionService.Documents.CutSheets;

/// <summary>How the pieces lie on each fabric, in parts of a page's width where the layout is long.</summary>
internal static class LayoutsSection
{
    public static void Add(Html html, SheetContext sheet)
    {
        html.Add($"""<section><h2>How the pieces lie</h2>""");
        int count = 0;
        foreach (LayoutAnswer layout in sheet.Quote.Layouts)
        {
            LayoutScale scale = LayoutScale.For(layout);
            foreach (Band band in scale.Bands(layout))
            {
                count++;
                html.Add($"<figure>");
                if (band.From == 0)
                {
                    html.Add($"<figcaption><h3>{layout.Label ?? layout.Fabric}</h3><p>{Facts(sheet, layout)}</p></figcaption>");
                }

                var scene = new LayoutScene
                {
                    Layout = layout,
                    Pieces = sheet.Pieces,
                    Units = sheet.Quote.Units,
                    Yardage = sheet.Quote.Yardage.FirstOrDefault(line => line.Fabric == layout.Fabric),
                    IdPrefix = FormattableString.Invariant($"layout-{count}"),
                };
                html.Add($"""{new Svg(LayoutDrawing.Draw(scene, scale, band))}</figure>""");
            }
        }

        html.Add($"""</section>""");
    }

    private static string Facts(SheetContext sheet, LayoutAnswer layout)
    {
        string bound = $"No layout can be shorter than {sheet.Units.Text(layout.LowerBound)}";
        return layout.ProvenMinimal
            ? $"{bound}; nothing shorter can be sold ({Argument(layout.Proof)})."
            : $"{bound}; whether a shorter length would do is not proven.";
    }

    private static string Argument(ProofKind proof) =>
        proof switch
        {
            ProofKind.Area => "by the area of the pieces",
            ProofKind.LongestPiece => "one piece alone is as long",
            ProofKind.DualFeasible => "by a bound on the sizes",
            ProofKind.Relaxation => "by a bound on one side at a time",
            ProofKind.Exhaustive => "every shorter way was tried",
            _ => "proven",
        };
}
