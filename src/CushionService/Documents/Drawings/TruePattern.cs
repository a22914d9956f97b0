using System.Globalization;
using CushionService.Contract;
using CushionService.Contract.Answers;

namespace CushionService.Documents.Drawings;

/// <summary>Draws a piece at true size on as many sheets of paper as it takes, to be laid edge to edge by their registration
/// marks.</summary>
internal static class TruePattern
{
    /// <summary>The sheets of a piece, row by row from its top, those left out that hold no line or mark of it.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="units">The unit of its lengths.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="number">The piece's number in the answer's list.</param>
    /// <returns>A well-formed SVG document for each sheet; its user unit is the millimetre.</returns>
    public static IReadOnlyList<string> Sheets(PieceAnswer piece, Units units, Paper paper, string number = "1")
    {
        var orderUnits = new OrderUnits(units);
        double scale = orderUnits.Millimetres;
        var view = new FabricView(piece.Width * scale, 0, piece.Length * scale, false, new Spot(0, 0));
        PieceAnswer inMillimetres = InMillimetres(piece, scale);
        var grid = new TileGrid(paper, view.Frame);
        List<Tile> tiles = grid.Holding(Lines(inMillimetres, view));
        string missing = tiles.Count < grid.Rows * grid.Columns ? "; where no line runs there is no sheet" : "";
        return [.. tiles.Select((tile, i) => Sheet(tile, i + 1))];

        string Sheet(Tile tile, int count)
        {
            string place = $"row {Whole(tile.Row + 1)} of {Whole(grid.Rows)}, column {Whole(tile.Column + 1)} of {Whole(grid.Columns)}";
            var canvas = new Canvas(
                new Spot(paper.Width, paper.Height),
                1,
                $"sheet-{Whole(count)}",
                $"Piece {number}, {piece.Label ?? piece.Id}, at true size: {place}",
                $"Sheet {Whole(count)} of {Whole(tiles.Count)}.",
                ("data-row", Whole(tile.Row)),
                ("data-column", Whole(tile.Column))
            );
            Spot shift = new Spot(TileGrid.Margin, TileGrid.Margin) - new Spot(tile.Net.X, tile.Net.Y);
            var here = view with { Corner = shift };
            canvas.Open("clipPath", ("id", $"{canvas.Id}-shown"));
            Box shown = new Box(TileGrid.Margin, TileGrid.Margin, tile.Net.Width, tile.Net.Height).Grown(TileGrid.Overlap);
            canvas.Rectangle(shown);
            canvas.Close();
            canvas.Open("g", ("clip-path", $"url(#{canvas.Id}-shown)"));
            canvas.Open(
                "g",
                ("class", "fabric"),
                ("transform", here.Transform),
                ("fill", "none"),
                ("stroke", Stroke.Ink),
                ("stroke-width", "0.4")
            );
            canvas.Polygon(Outline.Of(inMillimetres));
            canvas.Close();
            MarkSigns.Draw(canvas, here, inMillimetres, shown);
            canvas.Close();
            RegistrationMarks.Draw(canvas, tile, grid);
            string title =
                $"{number}: {PrintableText.Of(piece.Id)}: {orderUnits.Size(piece.Width, piece.Length)}, cut {Whole(piece.Quantity)}";
            TileNotes.Draw(
                canvas,
                paper,
                TextWidth.Shorten(title, 80 / TileNotes.Type, true),
                $"{place}; sheet {Whole(count)} of {Whole(tiles.Count)}{missing}",
                piece.Rotation
            );
            return canvas.Finish();
        }
    }

    private static List<(Spot From, Spot To)> Lines(PieceAnswer piece, FabricView view)
    {
        Spot[] corners = [.. Outline.Of(piece).Select(corner => view.At(corner.X, corner.Y))];
        return
        [
            .. corners.Select((corner, i) => (corner, corners[(i + 1) % corners.Length])),
            .. piece.Marks.Select(mark => (view.At(mark.X, mark.Y), view.At(mark.ToX ?? mark.X, mark.ToY ?? mark.Y))),
        ];
    }

    private static PieceAnswer InMillimetres(PieceAnswer piece, double scale) =>
        piece with
        {
            Width = piece.Width * scale,
            Length = piece.Length * scale,
            Points = piece.Points?.Select(point => new PointAnswer(point.X * scale, point.Y * scale)).ToList(),
            Marks =
            [
                .. piece.Marks.Select(mark =>
                    mark with
                    {
                        X = mark.X * scale,
                        Y = mark.Y * scale,
                        ToX = mark.ToX * scale,
                        ToY = mark.ToY * scale,
                    }
                ),
            ],
        };

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
