namespace CushionService.Documents.Sheets;

/// <summary>A heading, which is never the last on its page.</summary>
/// <param name="Text">Its words.</param>
/// <param name="Level">1 for the sheet's own, 2 for a part of it, 3 for a part of that.</param>
internal sealed record Heading(string Text, int Level) : Block;
