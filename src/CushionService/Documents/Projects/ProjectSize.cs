using CushionService.Contract.Answers;
using CushionService.Documents.CutSheets;

namespace CushionService.Documents.Projects;

/// <summary>The finished size of a cushion as people say it: a round one by its diameter.</summary>
internal static class ProjectSize
{
    private const string Round = "step.check-round";
    private const string Roll = "step.check-roll";

    /// <summary>The size, as its last step checks it.</summary>
    public static string Of(Job job, CushionAnswer cushion)
    {
        FinishedSizeAnswer size = cushion.Finished;
        string? check = job.Steps.LastOrDefault(step => step.Cushion == cushion.Id && step.Key is Round or Roll)?.Key;
        return check switch
        {
            Round => job.Say(
                ProjectTexts.RoundSize(job.Units.Text(size.Width), size.Thickness is { } thickness ? job.Units.Text(thickness) : null)
            ),
            Roll => job.Say(ProjectTexts.RollSize(job.Units.Text(size.Width), job.Units.Text(size.Depth))),
            _ => CushionPage.Size(job, cushion),
        };
    }
}
