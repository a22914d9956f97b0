using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>How the pieces lie on each fabric, in parts of a page's width where the layout is long.</summary>
internal static class LayoutsSection
{
    /// <summary>The drawings of every layout, with a heading.</summary>
    public static IEnumerable<Block> Of(Job job) => [new Heading(job.Say(SheetTexts.Layouts), 2), .. Drawings(job, false)];

    /// <summary>The drawings of every layout.</summary>
    /// <param name="job">The quote.</param>
    /// <param name="isShort">Whether the cutter alone reads them: no word of proofs, but of lots, motifs and what is left.</param>
    public static IEnumerable<Block> Drawings(Job job, bool isShort)
    {
        int count = 0;
        foreach (LayoutAnswer layout in job.Quote.Layouts)
        {
            LayoutScale scale = LayoutScale.For(layout);
            foreach (Band band in scale.Bands(layout))
            {
                count++;
                var scene = new LayoutScene
                {
                    Layout = layout,
                    Pieces = job.Pieces,
                    Units = job.Quote.Units,
                    Language = job.Units.Language,
                    Yardage = job.Quote.Yardage.FirstOrDefault(line => line.Fabric == layout.Fabric),
                    IdPrefix = FormattableString.Invariant($"layout-{count}"),
                };
                var drawing = new Figure(LayoutDrawing.Draw(scene, scale, band), LayoutScale.PageWidth);
                string facts =
                    band.From > 0 ? ""
                    : isShort ? Facts(job, layout)
                    : string.Join(' ', new[] { Bound(job, layout), Motif(job, layout) }.Where(text => text is { Length: > 0 }));
                yield return new Beside([
                    (1, facts.Length > 0 ? [drawing, new Paragraph(facts, isShort ? Tone.Body : Tone.Small)] : [drawing]),
                ]);
            }
        }
    }

    private static string Bound(Job job, LayoutAnswer layout) =>
        job.Say(SheetTexts.Bound(job.Units.Text(layout.LowerBound), layout.ProvenMinimal, layout.Proof));

    private static string Facts(Job job, LayoutAnswer layout) =>
        string.Join(
            ' ',
            new[] { Motif(job, layout), FabricNotes.Remnants(job, layout.Fabric) }
                .Prepend(string.Join(' ', FabricNotes.Of(job, layout.Fabric)))
                .Where(text => text is { Length: > 0 })
        );

    private static string? Motif(Job job, LayoutAnswer layout) =>
        layout.Motif is { } motif
            ? job.Say(SheetTexts.Motif(job.Units.Text(motif.Start), motif.X is { } across ? job.Units.Text(across) : null, motif.Known))
            : null;
}
