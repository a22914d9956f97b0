namespace CushionService.Documents.CutSheets;

/// <summary>Pictures of the cushions of a job, as SVG elements with a view box from (0, 0) whose ids are unique in a document.</summary>
/// <param name="Cushion">The finished cushion of an id; null for no picture.</param>
/// <param name="Step">What a step looks like; null where there is nothing to see.</param>
internal sealed record JobPictures(Func<string, string?> Cushion, Func<JobStep, string?> Step)
{
    /// <summary>No pictures.</summary>
    public static JobPictures None { get; } = new(static _ => null, static _ => null);
}
