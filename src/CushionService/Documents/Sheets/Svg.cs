namespace CushionService.Documents.Sheets;

/// <summary>A finished drawing, which goes into a document as it is.</summary>
/// <param name="Element">A well-formed SVG element.</param>
internal readonly record struct Svg(string Element);
