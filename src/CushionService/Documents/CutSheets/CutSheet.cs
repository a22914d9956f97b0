using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>All there is to say about a quote, to print and cut from: what to buy, what to cut, how it lies, what to mark, how to sew it,
/// what to beware of.</summary>
internal static class CutSheet
{
    /// <summary>The sheet of a quote.</summary>
    /// <param name="job">The quote.</param>
    /// <param name="paper">The paper; when null, Letter for a quote in inches and A4 for a metric one.</param>
    public static Sheet Of(Job job, Paper? paper = null)
    {
        string title = job.Say(SheetTexts.CutSheet(job.Quote.Reference));
        return JobDocument.Of(
            job,
            title,
            paper,
            [
                new Section([
                    new Heading(title, 1),
                    new Paragraph(job.Say(SheetTexts.MadeBy(job.Quote.Units, job.Quote.Engine))),
                    .. JobSection.Of(job),
                    .. NoticesSection.Warnings(job),
                    .. BuyingSection.Of(job),
                    .. CostSection.Of(job),
                    .. PiecesSection.Of(job),
                    .. LayoutsSection.Of(job),
                    .. MarksSection.Of(job),
                    .. SeamsSection.Of(job),
                    .. StepsSection.Of(job),
                    .. NoticesSection.Cautions(job),
                ]),
                new Section([.. LabelsSection.Of(job)]),
            ]
        );
    }
}
