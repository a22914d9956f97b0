namespace CushionService.Documents.Sheets;

/// <summary>A drawing.</summary>
/// <param name="Drawing">A well-formed SVG element with a view box from (0, 0).</param>
/// <param name="Width">The width that it is shown at, in millimetres; less where there is less room.</param>
/// <param name="Height">The most that it is high, in millimetres.</param>
internal sealed record Figure(string Drawing, double Width, double Height = double.MaxValue) : Block;
