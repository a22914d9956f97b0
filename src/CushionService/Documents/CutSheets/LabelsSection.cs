using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>A label for each piece, to cut out and pin to its pile.</summary>
internal static class LabelsSection
{
    private const int Across = 3;

    /// <summary>The labels, three beside each other.</summary>
    public static IEnumerable<Block> Of(Job job) =>
        [
            new Heading(job.Say(SheetTexts.Labels), 2),
            .. job.Quote.Pieces.Chunk(Across).Select(three => new Beside([.. Labels(job, three)], Framed: true)),
        ];

    private static IEnumerable<(double, IReadOnlyList<Block>)> Labels(Job job, PieceAnswer[] pieces)
    {
        for (int i = 0; i < Across; i++)
        {
            yield return (1.0 / Across, i < pieces.Length ? Label(job, pieces[i]) : []);
        }
    }

    private static IReadOnlyList<Block> Label(Job job, PieceAnswer piece) =>
        [
            new Paragraph([new Run($"{job.Pieces[piece.Id].Number}: {piece.Label ?? piece.Id}", true)]),
            new Paragraph([new Run(job.Units.Size(piece.Width, piece.Length), true)]),
            new Paragraph(job.Say(SheetTexts.CutOf(job.FabricName(piece.Fabric), piece.Quantity))),
            new Paragraph(job.Say(GrainArrow.Meaning(piece.Rotation))),
            new Paragraph(job.Quote.Reference ?? "", Tone.Small),
        ];
}
