namespace CushionService.Documents.Sheets;

/// <summary>Blocks side by side, never parted by the end of a page.</summary>
/// <param name="Columns">From left to right: the share of the width, and what is in it, from top to bottom.</param>
/// <param name="Framed">Whether each is in a frame to cut out.</param>
internal sealed record Beside(IReadOnlyList<(double Share, IReadOnlyList<Block> Blocks)> Columns, bool Framed = false) : Block;
