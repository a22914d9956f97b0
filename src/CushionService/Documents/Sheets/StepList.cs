namespace CushionService.Documents.Sheets;

/// <summary>What to do, in order.</summary>
/// <param name="Steps">The steps.</param>
internal sealed record StepList(IReadOnlyList<StepEntry> Steps) : Block;
