namespace CushionService.Documents.Sheets;

/// <summary>A list, with a box to tick before each entry or a dot.</summary>
/// <param name="Entries">The entries.</param>
/// <param name="Ticked">Whether each has a box to tick.</param>
internal sealed record Bullets(IReadOnlyList<IReadOnlyList<Run>> Entries, bool Ticked) : Block;
