namespace CushionService.Documents.Sheets;

/// <summary>A part of a sheet that begins a page.</summary>
/// <param name="Blocks">What is in it.</param>
/// <param name="IsFitted">Whether its type may be set smaller so that it takes fewer pages.</param>
internal sealed record Section(IReadOnlyList<Block> Blocks, bool IsFitted = false);
