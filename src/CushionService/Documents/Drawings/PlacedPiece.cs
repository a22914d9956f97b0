using CushionService.Contract.Answers;

namespace CushionService.Documents.Drawings;

/// <summary>A placement as it is drawn.</summary>
/// <param name="Number">The piece's number.</param>
/// <param name="Piece">The piece.</param>
/// <param name="Placement">Where it lies.</param>
/// <param name="Corners">Its outline on the fabric; null for a rectangle.</param>
/// <param name="Up">Its own up in the drawing.</param>
/// <param name="Caption">What is on it.</param>
internal sealed record PlacedPiece(string Number, PieceAnswer Piece, PlacementAnswer Placement, Spot[]? Corners, Spot Up, Caption Caption)
{
    /// <summary>Draws the outline, in the coordinates of the fabric.</summary>
    /// <param name="canvas">Within the group whose transform turns the fabric the right way up.</param>
    public void DrawOutline(Canvas canvas)
    {
        canvas.Open(
            "g",
            ("data-piece", Placement.Piece),
            ("data-copy", Canvas.Exact(Placement.Copy)),
            ("data-rotation", Canvas.Exact(Placement.Rotation))
        );
        if (Corners is not null)
        {
            canvas.Polygon(Corners);
        }
        else
        {
            canvas.Element(
                "rect",
                ("x", Canvas.Exact(Placement.X)),
                ("y", Canvas.Exact(Placement.Y)),
                ("width", Canvas.Exact(Placement.Width)),
                ("height", Canvas.Exact(Placement.Length))
            );
        }

        canvas.Close();
    }

    /// <summary>Draws what is on it.</summary>
    /// <param name="canvas">Outside that group, so that words are not mirrored.</param>
    public void DrawCaption(Canvas canvas)
    {
        canvas.Open("g", ("data-label", Placement.Piece), ("data-copy", Canvas.Exact(Placement.Copy)));
        Caption.Draw(canvas, Up, Piece.Rotation);
        canvas.Close();
    }
}
