using CushionService.Contract;
using CushionService.Contract.Answers;

namespace CushionService.Documents.Drawings;

/// <summary>Draws one piece to scale: cut line, marks by letter, sizes, the sign of how it may lie.</summary>
internal static class PieceDrawing
{
    // Room round the piece in millimetres of the nominal print, for the title, the figures beside it and the figure
    // below.
    private const double Above = 13;
    private const double Beside = 31;
    private const double After = 7;
    private const double Below = 15;

    // Small drawings stand closer to their figures.
    private const double SmallAbove = 10;
    private const double SmallBelow = 12;

    /// <summary>The drawing of a piece, with its marks listed in words.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="units">The unit of every length.</param>
    /// <param name="number">Its number in the answer's list.</param>
    /// <returns>A well-formed SVG document.</returns>
    public static string Draw(PieceAnswer piece, Units units, string number = "1") =>
        Draw(
            new PieceScene
            {
                Piece = piece,
                Units = units,
                Number = number,
            }
        );

    /// <summary>The drawing of a scene.</summary>
    /// <param name="scene">What is shown, and its words.</param>
    /// <returns>A well-formed SVG element.</returns>
    public static string Draw(PieceScene scene)
    {
        PieceAnswer piece = scene.Piece;
        var units = new OrderUnits(scene.Units, scene.Language);
        // A piece that is longer than wide lies on its side: the page is wider than high.
        bool turned = piece.Length > piece.Width;
        (double across, double down) = turned ? (piece.Length, piece.Width) : (piece.Width, piece.Length);
        bool small = scene.Width < LayoutScale.PageWidth;
        (double above, double below) = small ? (SmallAbove, SmallBelow) : (Above, Below);
        double mm = Math.Max(across / (scene.Width - Beside - After), down / (small ? 32 : 50));
        var view = new FabricView(piece.Width, 0, piece.Length, turned, new Spot(Beside * mm, above * mm));
        List<string> list = scene.ListsMarks ? MarkWords.Lines(piece, units, scene.Width / MarkWords.Type) : [];
        double height = view.Frame.Bottom / mm + below + list.Count * MarkWords.Type * Label.Pitch;
        var canvas = new Canvas(
            new Spot(scene.Width * mm, height * mm),
            mm,
            scene.IdPrefix,
            units.Say(DrawingTexts.PieceTitle(scene.IsOfSeveral, scene.Number, piece.Label ?? piece.Id)),
            units.Say(
                DrawingTexts.PieceShown(units.Size(piece.Width, piece.Length), GrainArrow.Meaning(piece.Rotation), piece.Marks.Count)
            ),
            ("data-piece", piece.Id),
            ("data-units", units.Symbol)
        );
        string title = TextWidth.Shorten($"{scene.Number}: {PrintableText.Of(piece.Label ?? piece.Id)}", scene.Width / 3.4, true);
        canvas.Text(new Spot(0, 4 * mm), title, 3.4 * mm, bold: true);
        canvas.Open(
            "g",
            ("class", "fabric"),
            ("transform", view.Transform),
            ("fill", "#fff"),
            ("stroke", Stroke.Cut.Colour),
            Canvas.Attribute("stroke-width", Stroke.Cut.Width * mm)
        );
        canvas.Polygon(Outline.Of(piece));
        canvas.Close();
        Dimensions(canvas, view, piece, units);
        IReadOnlyList<Box> taken = MarkSigns.Draw(canvas, view, piece, view.Frame.Grown(6 * canvas.Mm), scene.Lettered);
        Inside(canvas, scene, view, taken);
        for (int i = 0; i < list.Count; i++)
        {
            double baseline = view.Frame.Bottom / mm + below + i * MarkWords.Type * Label.Pitch;
            canvas.Text(new Spot(0, baseline * mm), list[i], MarkWords.Type * mm);
        }

        return canvas.Finish();
    }

    private static void Dimensions(Canvas canvas, FabricView view, PieceAnswer piece, OrderUnits units)
    {
        Box frame = view.Frame;
        (double along, double across) = view.Turned ? (piece.Length, piece.Width) : (piece.Width, piece.Length);
        double gap = 9 * canvas.Mm;
        DimensionLine.Draw(canvas, new Spot(frame.X, frame.Bottom + gap), new Spot(frame.Right, frame.Bottom + gap), units.Text(along));
        DimensionLine.Draw(canvas, new Spot(frame.X - gap, frame.Bottom), new Spot(frame.X - gap, frame.Y), units.Text(across));
    }

    // The sign and the cut size are in the middle, where marks leave them room.
    private static void Inside(Canvas canvas, PieceScene scene, FabricView view, IReadOnlyList<Box> taken)
    {
        Spot[] outline = [.. Outline.Of(scene.Piece).Select(corner => view.At(corner.X, corner.Y))];
        Box room = LabelRoom.Within(outline, view.Frame);
        Caption caption = Caption.For(
            scene.Number,
            scene.Piece,
            new OrderUnits(scene.Units, scene.Language),
            FreeRoom.Within(room, taken.Select(box => box.Grown(2 * canvas.Mm))),
            view.Up,
            canvas.Mm
        );
        caption.Draw(canvas, view.Up, scene.Piece.Rotation);
    }
}
