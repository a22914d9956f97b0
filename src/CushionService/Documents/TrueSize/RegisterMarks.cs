using System.Globalization;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.TrueSize;

/// <summary>The signs for laying sheets together: a ringed cross on each corner of the net area, and on each edge that meets
/// another sheet half a diamond with the number of the joint.</summary>
internal static class RegisterMarks
{
    // In millimetres, from the centre of each sign.
    private const double Arm = 5;
    private const double Ring = 2.5;
    private const double Diamond = 4;

    /// <summary>Draws the signs of a sheet.</summary>
    /// <param name="canvas">The drawing, in millimetres.</param>
    /// <param name="part">A part of a piece, with its tile.</param>
    public static void Draw(Canvas canvas, PatternPart part)
    {
        Tile tile = part.Tile!;
        string piece = part.Piece.Number.ToString(CultureInfo.InvariantCulture);
        var net = new Box(TileGrid.Margin, TileGrid.Margin, tile.Net.Width, tile.Net.Height);
        canvas.Open("g", ("class", "registration"));
        canvas.OpenStroked(Stroke.Fine);
        canvas.Rectangle(net, ("stroke-dasharray", "1 3"));
        foreach (
            Spot corner in (ReadOnlySpan<Spot>)
                [new(net.X, net.Y), new(net.Right, net.Y), new(net.X, net.Bottom), new(net.Right, net.Bottom)]
        )
        {
            canvas.Line(corner - new Spot(Arm, 0), corner + new Spot(Arm, 0));
            canvas.Line(corner - new Spot(0, Arm), corner + new Spot(0, Arm));
            canvas.Element("circle", Canvas.Attribute("cx", corner.X), Canvas.Attribute("cy", corner.Y), Canvas.Attribute("r", Ring));
        }

        canvas.Close();
        Joint(tile.Column > 0, new Spot(net.X, net.Centre.Y), new Spot(1, 0), Name("v", tile.Row, tile.Column));
        Joint(
            tile.Column < tile.Grid.Columns - 1,
            new Spot(net.Right, net.Centre.Y),
            new Spot(-1, 0),
            Name("v", tile.Row, tile.Column + 1)
        );
        Joint(tile.Row > 0, new Spot(net.Centre.X, net.Y), new Spot(0, 1), Name("h", tile.Row, tile.Column));
        Joint(tile.Row < tile.Grid.Rows - 1, new Spot(net.Centre.X, net.Bottom), new Spot(0, -1), Name("h", tile.Row + 1, tile.Column));
        canvas.Close();

        void Joint(bool meets, Spot at, Spot inward, string name)
        {
            if (meets)
            {
                canvas.OpenStroked(Stroke.Mark);
                canvas.Polygon([at + Diamond * inward.Turned(), at + Diamond * inward, at - Diamond * inward.Turned()]);
                canvas.Close();
                canvas.Text(at + (Diamond + 6) * inward + new Spot(0, 1), name, 2.6, "middle");
            }
        }

        // Two sheets that meet print the same name on their halves; no other piece has it.
        string Name(string way, int row, int column) => string.Create(CultureInfo.InvariantCulture, $"{piece}-{way}{row + 1}.{column + 1}");
    }
}
