namespace CushionService.Documents.Sheets;

/// <summary>A step as it is shown.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Words">What to do, a paragraph each.</param>
/// <param name="Picture">What it looks like, beside the words; null for none.</param>
internal sealed record StepEntry(int Number, IReadOnlyList<Paragraph> Words, Figure? Picture = null);
