namespace CushionService.Documents.Sheets;

/// <summary>A cell of a table.</summary>
/// <param name="Text">Its words.</param>
/// <param name="Bold">Whether they are bold.</param>
/// <param name="Sign">A small drawing before the words; null for none.</param>
/// <param name="Link">Where a click on the words leads; null for nowhere.</param>
internal sealed record Cell(string Text, bool Bold = false, string? Sign = null, string? Link = null);
