using CushionService.Documents.Drawings;

namespace CushionService.Documents.TrueSize;

/// <summary>A piece on a sheet of paper, whole or in part.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="View">Where it lies on the sheet, in millimetres.</param>
/// <param name="Tile">The part of it that the sheet shows; null for all of it.</param>
internal sealed record PatternPart(PatternPiece Piece, FabricView View, Tile? Tile);
