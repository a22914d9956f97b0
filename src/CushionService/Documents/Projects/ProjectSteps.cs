using CushionService.Contract.Answers;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.Projects;

/// <summary>Steps as a lesson: what it is called, a picture, what to do, how, and what to measure then.</summary>
internal static class ProjectSteps
{
    private const double PictureWidth = 62;
    private const double PictureHeight = 34;
    private const string Loop = "step.close-loop";

    /// <summary>The steps of a cushion, or of the whole order.</summary>
    /// <param name="job">The quote.</param>
    /// <param name="cushion">The cushion; null for what is done once.</param>
    public static StepList Of(Job job, CushionAnswer? cushion) =>
        new([.. job.Steps.Where(step => step.Cushion == cushion?.Id).Select(step => Entry(job, cushion, step))]);

    private static StepEntry Entry(Job job, CushionAnswer? cushion, JobStep step)
    {
        string? picture = job.Pictures.Step(step) ?? StepPieces.Draw(job, step);
        return new StepEntry(
            step.Number,
            [.. Words(job, cushion, step)],
            picture is null ? null : new Figure(picture, PictureWidth, PictureHeight)
        );
    }

    private static IEnumerable<Paragraph> Words(Job job, CushionAnswer? cushion, JobStep step)
    {
        Lesson? lesson = Lesson.Of(step.Key);
        if (lesson is not null)
        {
            yield return new Paragraph([new Run(job.Say(lesson.Title), true)]);
        }

        yield return new Paragraph(step.Text);
        if (lesson is not null)
        {
            yield return new Paragraph(job.Say(lesson.How), Tone.Small);
        }

        if (step.Key == Loop && cushion?.Loop is { } loop)
        {
            string check = job.Say(ProjectTexts.CheckLoop(job.Units.Text(loop), job.Units.Text(loop / 2)));
            yield return new Paragraph(check, Tone.Notice);
        }
    }
}
