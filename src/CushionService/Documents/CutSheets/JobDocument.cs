using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>What all sheets of a job have in common.</summary>
internal static class JobDocument
{
    /// <summary>A sheet.</summary>
    /// <param name="job">The quote.</param>
    /// <param name="title">Its title.</param>
    /// <param name="paper">The paper; when null, Letter for a quote in inches and A4 for a metric one.</param>
    /// <param name="sections">Its parts.</param>
    /// <param name="look">How it looks; as the workroom's when left out.</param>
    public static Sheet Of(Job job, string title, Paper? paper, IReadOnlyList<Section> sections, Look? look = null) =>
        new()
        {
            Title = title,
            Language = job.Units.Language,
            Paper = paper ?? Paper.For(job.Quote.Units),
            Look = look ?? Look.Workroom,
            Sections = sections,
            PageNumber = (number, count) => job.Say(SheetTexts.Page(number, count)),
        };
}
