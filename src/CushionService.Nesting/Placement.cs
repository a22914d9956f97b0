namespace CushionService.Nesting;

/// <summary>Where one copy of a piece lies.</summary>
/// <param name="Piece">Index into the problem's pieces.</param>
/// <param name="Copy">Which copy, from 0.</param>
/// <param name="Sheet">Which sheet of the answer, from 0; always 0 on a strip.</param>
/// <param name="X">Left edge of the piece's bounding box as it lies, in grid units.</param>
/// <param name="Y">Lower edge of the piece's bounding box as it lies, in grid units.</param>
/// <param name="Turn">Counter-clockwise turn in degrees: 0, 90, 180 or 270.</param>
public readonly record struct Placement(int Piece, int Copy, int Sheet, long X, long Y, int Turn);
