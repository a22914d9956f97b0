using CushionService.Nesting;

namespace CushionService.Documents.Drawings;

/// <summary>The sign of how a piece may lie as a drawing of its own, for a table or a label. The words beside it say the same, so it is
/// hidden from screen readers.</summary>
internal static class ArrowDrawing
{
    private const double Size = 6;

    /// <summary>The sign, 6 mm square.</summary>
    /// <param name="rotation">The turns that the piece may be laid in.</param>
    /// <returns>A well-formed SVG element.</returns>
    public static string Draw(Rotations rotation)
    {
        var canvas = Canvas.Sign(new Spot(Size, Size));
        GrainArrow.Draw(canvas, new Spot(Size / 2, Size / 2), new Spot(0, -1), Size - 1, rotation);
        return canvas.Finish();
    }
}
