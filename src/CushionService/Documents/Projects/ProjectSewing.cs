using CushionService.Contract.Answers;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Sheets;
using CushionService.Engine.Messages;

namespace CushionService.Documents.Projects;

/// <summary>The marking and sewing of one cushion of a project sheet.</summary>
internal static class ProjectSewing
{
    private const string Closes = "step.close-closure";

    /// <summary>What is on it.</summary>
    public static IEnumerable<Block> Of(Job job, CushionAnswer cushion)
    {
        PieceAnswer[] pieces = [.. job.Quote.Pieces.Where(piece => piece.Cushion == cushion.Id)];
        yield return new Heading(cushion.Label ?? cushion.Id, 1);
        if (cushion.Quantity > 1)
        {
            yield return new Paragraph(job.Say(ProjectTexts.EachOf(cushion.Quantity)));
        }

        if (job.Allowances.TryGetValue(cushion.Id, out double allowance))
        {
            yield return new Paragraph(job.Say(ProjectTexts.AllowanceIs(job.Units.Text(allowance))));
        }

        foreach (Block block in NeededMarks.Of(job, pieces))
        {
            yield return block;
        }

        yield return new Paragraph(job.Say(ProjectTexts.MarkHow), Tone.Small);
        yield return new Heading(job.Say(ProjectTexts.Sew), 2);
        yield return ProjectSteps.Of(job, cushion);
        yield return new Heading(job.Say(ProjectTexts.Checks), 2);
        string size = ProjectSize.Of(job, cushion);
        bool closes = job.Steps.Any(step => step.Cushion == cushion.Id && step.Key == Closes);
        Message[] checks =
        [
            ProjectTexts.CheckSize(size, job.Units.Text(cushion.Finished.Tolerance)),
            ProjectTexts.CheckSeams,
            .. closes ? [ProjectTexts.CheckClosure] : (Message[])[],
            ProjectTexts.CheckThreads,
        ];
        yield return new Bullets([.. checks.Select(check => (Run[])[new Run(job.Say(check))])], true);
    }
}
