namespace CushionService.Documents.Pictures;

/// <summary>How a shape is drawn. Colours are values of SVG, and names of CSS variables that may replace them.</summary>
/// <param name="Fill">What fills it; null for nothing.</param>
/// <param name="Opacity">Of the fill, or of a line alone.</param>
/// <param name="Stroke">What its line is drawn with; null for none.</param>
/// <param name="Width">Of the line, in units of the picture, which is a thousand of them wide.</param>
internal readonly record struct Ink(Tint? Fill, double Opacity = 1, Tint? Stroke = null, double Width = 0)
{
    /// <summary>Whether the line is dashed.</summary>
    public bool IsDashed { get; init; }
}
