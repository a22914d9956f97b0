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
    private const int MostTaken = 6;

    // Before anything is sewn the pieces are what is to be seen, not the cushion.
    private static readonly string[] OfPieces = ["step.cut-fabric", "step.finish-raw-edges"];

    /// <summary>The steps of a cushion, or of the whole order.</summary>
    /// <param name="job">The quote.</param>
    /// <param name="cushion">The cushion; null for what is done once.</param>
    public static StepList Of(Job job, CushionAnswer? cushion)
    {
        var told = new Dictionary<Lesson, int>();
        return new([.. job.Steps.Where(step => step.Cushion == cushion?.Id).Select(step => Entry(job, cushion, step, told))]);
    }

    private static StepEntry Entry(Job job, CushionAnswer? cushion, JobStep step, Dictionary<Lesson, int> told)
    {
        string? picture = (OfPieces.Contains(step.Key) ? null : job.Pictures.Step(step)) ?? StepPieces.Draw(job, step);
        return new StepEntry(
            step.Number,
            [.. Words(job, cushion, step, told)],
            picture is null ? null : new Figure(picture, PictureWidth, PictureHeight)
        );
    }

    // How a thing is done is said once; after that the step says where it was.
    private static IEnumerable<Paragraph> Words(Job job, CushionAnswer? cushion, JobStep step, Dictionary<Lesson, int> told)
    {
        Lesson? lesson = Lesson.Of(step.Key);
        if (lesson is not null)
        {
            yield return new Paragraph([new Run(job.Say(lesson.Title), true)]);
        }

        bool takes = !OfPieces.Contains(step.Key) && step.Pieces.Count is > 0 and <= MostTaken;
        yield return new Paragraph([
            .. takes ? [new Run(job.Say(ProjectTexts.TakeThese(job.Numbers(step.Pieces))), true)] : (Run[])[],
            new Run(step.Text),
        ]);
        if (lesson is not null)
        {
            string how = told.TryGetValue(lesson, out int number) ? job.Say(ProjectTexts.AsInStep(number)) : job.Say(lesson.How);
            told.TryAdd(lesson, step.Number);
            yield return new Paragraph(how, Tone.Small);
        }

        if (step.Key == Loop && cushion?.Loop is { } loop)
        {
            string check = job.Say(ProjectTexts.CheckLoop(job.Units.Text(loop), job.Units.Text(loop / 2)));
            yield return new Paragraph(check, Tone.Notice);
        }
    }
}
