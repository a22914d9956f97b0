using CushionService.Contract.Answers;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>The ticket of a job, to pin up in the workroom: a page with what to buy and to beware of, then the cutting, then a page for
/// each cushion.</summary>
internal static class Ticket
{
    /// <summary>The sheet of a quote.</summary>
    /// <param name="job">The quote.</param>
    /// <param name="paper">The paper; when null, Letter for a quote in inches and A4 for a metric one.</param>
    public static Sheet Of(Job job, Paper? paper = null)
    {
        string title = job.Say(SheetTexts.Ticket(job.Quote.Reference));
        return JobDocument.Of(
            job,
            title,
            paper,
            [
                new Section([.. Front(job, title)], IsFitted: true),
                new Section([.. Cutting(job)], IsFitted: true),
                .. job.Quote.Cushions.Select(cushion => new Section([.. CushionPage.Of(job, cushion)], IsFitted: true)),
            ]
        );
    }

    private static IEnumerable<Block> Front(Job job, string title) =>
        [
            new Heading(title, 1),
            .. JobSection.Of(job),
            .. NoticesSection.Warnings(job),
            .. Cushions(job),
            .. BuyingSection.Short(job),
            .. CostSection.Of(job, isWhole: false),
            .. NoticesSection.ShortCautions(job),
            new Paragraph(job.Say(SheetTexts.MadeBy(job.Quote.Units, job.Quote.Engine)), Tone.Small),
        ];

    private static IEnumerable<Block> Cushions(Job job)
    {
        IReadOnlyList<CushionAnswer> cushions = job.Quote.Cushions;
        if (cushions.Count == 0)
        {
            yield break;
        }

        bool grouped = cushions.Any(cushion => cushion.Group is not null);
        yield return new Table(
            "",
            [
                new Column(job.Say(SheetTexts.Done), ColumnKind.Tick),
                new Column(job.Say(SheetTexts.Cushion), ColumnKind.Name),
                new Column(job.Say(SheetTexts.MakeHead)),
                new Column(job.Say(SheetTexts.FinishedHead)),
                .. grouped ? [new Column(job.Say(SheetTexts.Group))] : (Column[])[],
                .. job.Quote.Cost is { } cost ? [new Column(job.Say(SheetTexts.Amount(cost.Currency)), ColumnKind.Number)] : (Column[])[],
            ],
            [
                .. cushions.Select(cushion =>
                    Line(
                        job,
                        grouped,
                        cushion.Id,
                        cushion.Label ?? cushion.Id,
                        cushion.Quantity,
                        CushionPage.Size(job, cushion),
                        cushion.Group
                    )
                ),
                .. job.Quote.Cost?.Shares.Where(share => share.Cushion is null)
                    .Select(own => Line(job, grouped, null, job.Say(SheetTexts.OwnShare), own.Quantity, "", null))
                    ?? [],
            ]
        );
    }

    private static Row Line(Job job, bool grouped, string? id, string name, int quantity, string size, string? group)
    {
        string? amount = job.Quote.Cost?.Shares.FirstOrDefault(share => share.Cushion == id)?.Amount;
        return Row.Of(
            null,
            [
                "",
                name,
                job.Say(SheetTexts.Made(quantity)),
                size,
                .. grouped ? [group] : (string?[])[],
                .. job.Quote.Cost is null ? [] : (string?[])[amount is null ? null : job.Units.Amount(amount)],
            ]
        );
    }

    private static IEnumerable<Block> Cutting(Job job)
    {
        yield return new Heading(job.Say(SheetTexts.Cutting), 1);
        StepList once = StepsSection.Of(job, null);
        if (once.Steps.Count > 0)
        {
            yield return once;
        }

        foreach (Block drawing in LayoutsSection.Drawings(job, isShort: true))
        {
            yield return drawing;
        }

        if (PiecesSection.Placed(job, null) is { Rows.Count: > 0 } own)
        {
            yield return new Heading(job.Say(SheetTexts.OwnPieces), 2);
            yield return own;
        }
    }
}
