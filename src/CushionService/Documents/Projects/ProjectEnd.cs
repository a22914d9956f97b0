using CushionService.Documents.CutSheets;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.Projects;

/// <summary>The end of a project sheet: cautions, care, and where the shop is.</summary>
internal static class ProjectEnd
{
    /// <summary>What is on it.</summary>
    public static IEnumerable<Block> Of(Job job, ShopDetails shop)
    {
        yield return new Heading(job.Say(ProjectTexts.Cautions), 2);
        yield return new Bullets([.. job.Quote.Cautions.Select(caution => (Run[])[new Run(caution.Text)])], false);
        if (job.Quote.Care is { } care)
        {
            yield return new Heading(job.Say(ProjectTexts.Care), 2);
            yield return new Paragraph(care);
        }

        if (shop.Link is { } link)
        {
            yield return new Paragraph([new Run(shop.Name ?? link.AbsoluteUri, true), new Run(link.AbsoluteUri, false, link.AbsoluteUri)]);
        }
    }
}
