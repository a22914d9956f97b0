using CushionService.Contract.Answers;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>What is sewn to what, over which finished length: the workroom's check sums.</summary>
internal static class SeamsSection
{
    /// <summary>Every seam.</summary>
    public static IEnumerable<Block> Of(Job job) =>
        job.Quote.Seams.Count == 0
            ? []
            :
            [
                new Heading(job.Say(SheetTexts.Seams), 2),
                new Table(
                    "",
                    [
                        new Column(job.Say(SheetTexts.Cushion), ColumnKind.Name),
                        new Column(job.Say(SheetTexts.Sew)),
                        new Column(job.Say(SheetTexts.To)),
                        new Column(job.Say(SheetTexts.FinishedLength)),
                    ],
                    [
                        .. job.Quote.Seams.Select(seam =>
                            Row.Of(null, job.CushionName(seam.Cushion), Edges(seam.One), Edges(seam.Other), Length(job, seam))
                        ),
                    ]
                ),
            ];

    private static string Length(Job job, SeamAnswer seam)
    {
        string length = job.Units.Text(seam.Length);
        return seam.Lap > 0 ? job.Say(SheetTexts.Lapped(length, job.Units.Text(seam.Lap))) : length;
    }

    private static string Edges(IReadOnlyList<string> edges) => string.Join(" + ", edges);
}
