namespace CushionService.Documents.Sheets;

/// <summary>A line of a paragraph.</summary>
/// <param name="Parts">Words in one style each, and how far from the start of the line they begin, in ems.</param>
/// <param name="Width">In ems.</param>
internal sealed record TextLine(IReadOnlyList<(double At, Run Run)> Parts, double Width);
