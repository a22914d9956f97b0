using CushionService.Contract.Answers;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.Projects;

/// <summary>The sheet with which a first-time sewer makes the cushion at home: what to buy and to have at hand, how to cut and mark, then
/// step by step, with checks.</summary>
internal static class ProjectSheet
{
    private const double Type = 11.5;

    /// <summary>The sheet of a quote.</summary>
    /// <param name="job">The quote.</param>
    /// <param name="shop">Whose name it has.</param>
    /// <param name="paper">The paper; when null, Letter for a quote in inches and A4 for a metric one.</param>
    public static Sheet Of(Job job, ShopDetails shop, Paper? paper)
    {
        string title = Title(job);
        return JobDocument.Of(
            job,
            title,
            paper,
            [
                new Section([.. ProjectFront.Of(job, shop, title)], IsFitted: true),
                new Section([.. ProjectCutting.Of(job)], IsFitted: true),
                .. job.Quote.Cushions.Select(cushion => new Section(
                    [.. ProjectSewing.Of(job, cushion), .. Last(job, shop, cushion)],
                    IsFitted: true
                )),
            ],
            new Look(Type, shop.Colour)
        );
    }

    private static string Title(Job job) =>
        job.Quote.Cushions is [CushionAnswer only]
            ? job.Say(ProjectTexts.Title(only.Label ?? only.Id))
            : job.Say(ProjectTexts.TitleOfSeveral(job.Quote.Cushions.Sum(cushion => cushion.Quantity)));

    // What concerns all cushions is said after the last.
    private static IEnumerable<Block> Last(Job job, ShopDetails shop, CushionAnswer cushion) =>
        cushion == job.Quote.Cushions[^1] ? ProjectEnd.Of(job, shop) : [];
}
