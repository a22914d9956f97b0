using CushionService.Documents.Drawings;

namespace CushionService.Documents.TrueSize;

/// <summary>One sheet's part of a piece that is larger than the paper.</summary>
/// <param name="Row">From the top, from 0.</param>
/// <param name="Column">From the left, from 0.</param>
/// <param name="Net">What it shows between its register marks, in millimetres of the whole drawing.</param>
/// <param name="Grid">All of the piece's sheets.</param>
internal sealed record Tile(int Row, int Column, Box Net, TileGrid Grid);
