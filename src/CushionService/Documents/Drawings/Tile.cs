namespace CushionService.Documents.Drawings;

/// <summary>One sheet's part of a drawing at true size.</summary>
/// <param name="Row">From the top, from 0.</param>
/// <param name="Column">From the left, from 0.</param>
/// <param name="Net">What it shows between its registration marks, in millimetres of the whole drawing.</param>
internal readonly record struct Tile(int Row, int Column, Box Net);
