using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>What to do, in order, with the numbers of the pieces that each step handles.</summary>
internal static class StepsSection
{
    private const double PictureWidth = 30;
    private const double PictureHeight = 16;

    /// <summary>Every step of the order, with the name of its cushion.</summary>
    public static IEnumerable<Block> Of(Job job)
    {
        if (job.Quote.Steps.Count == 0)
        {
            yield break;
        }

        yield return new Heading(job.Say(SheetTexts.Steps), 2);
        if (job.Quote.Tools.Count > 0)
        {
            yield return new Paragraph(job.Say(SheetTexts.Tools([.. job.Quote.Tools.Select(use => ToolNameTexts.Tool(use.Tool))])));
        }

        yield return new StepList([.. job.Quote.Steps.Select(step => new StepEntry(step.Number, [Words(job, step.Text, step.Pieces)]))]);
    }

    /// <summary>The steps of one cushion, or of the whole order, with pictures where there are any.</summary>
    /// <param name="job">The quote.</param>
    /// <param name="cushion">The id of the cushion; null for what is done once.</param>
    public static StepList Of(Job job, string? cushion) =>
        new([
            .. job
                .Steps.Where(step => step.Cushion == cushion)
                .Select(step => new StepEntry(step.Number, [Words(job, step)], Picture(job, step))),
        ]);

    private static Paragraph Words(Job job, JobStep step) => Words(job, step.Text, step.Pieces);

    private static Paragraph Words(Job job, string text, IReadOnlyList<string> pieces) =>
        new(pieces.Count == 0 ? text : job.Say(SheetTexts.StepPieces(text, job.Numbers(pieces))));

    private static Figure? Picture(Job job, JobStep step) =>
        job.Pictures.Step(step) is { } drawing ? new Figure(drawing, PictureWidth, PictureHeight) : null;
}
