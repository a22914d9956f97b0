using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Layouts;

/// <summary>One copy of a cut piece on the fabric.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Copy">Which copy, from 1.</param>
/// <param name="X">From the left edge of the usable width.</param>
/// <param name="Y">From the start of the fabric.</param>
/// <param name="Turn">Counter-clockwise turn in degrees: 0, 90, 180 or 270.</param>
/// <param name="IsMatched">Whether a motif lies on its matching point.</param>
public sealed record LaidPiece(CutPiece Piece, int Copy, Length X, Length Y, int Turn, bool IsMatched = false)
{
    /// <summary>Extent across the fabric as it lies.</summary>
    public Length Width => Turn % 180 == 0 ? Piece.Width : Piece.Length;

    /// <summary>Extent along the fabric as it lies.</summary>
    public Length Length => Turn % 180 == 0 ? Piece.Length : Piece.Width;
}
