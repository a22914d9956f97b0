namespace CushionService.Documents.Sheets;

/// <summary>Words in one style.</summary>
/// <param name="Text">The words.</param>
/// <param name="Bold">Whether they are bold.</param>
/// <param name="Link">Where a click on them leads, an absolute address of https or http; null for nowhere.</param>
internal sealed record Run(string Text, bool Bold = false, string? Link = null);
