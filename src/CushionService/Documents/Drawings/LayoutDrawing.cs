using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Documents.Drawings;

/// <summary>Draws how the pieces of one fabric lie, to scale. Inside the group <c>fabric</c> every rectangle and corner is at exactly
/// the coordinates of the answer, in the answer's units; one transform of the group turns the fabric the right way up.</summary>
internal static class LayoutDrawing
{
    private const double Above = 13;
    private const double RulerRoom = 17;
    private const double BoltRoom = 11;

    /// <summary>The drawing of a whole layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="pieces">The answer's pieces; their order gives the numbers.</param>
    /// <param name="units">The unit of every length.</param>
    /// <param name="yardage">What is bought of the fabric; null where the answer does not say.</param>
    /// <param name="language">The language that it is written in.</param>
    /// <returns>A well-formed SVG document.</returns>
    public static string Draw(
        LayoutAnswer layout,
        IReadOnlyList<PieceAnswer> pieces,
        Units units,
        YardageLine? yardage = null,
        Language language = Language.English
    ) =>
        Draw(
            new LayoutScene
            {
                Layout = layout,
                Pieces = new NumberedPieces(pieces),
                Units = units,
                Yardage = yardage,
                Language = language,
            }
        );

    /// <summary>The drawing of a whole scene.</summary>
    public static string Draw(LayoutScene scene) => Draw(scene, LayoutScale.For(scene.Layout), Band.Whole(scene.Layout));

    /// <summary>The drawing of one band of a scene.</summary>
    public static string Draw(LayoutScene scene, LayoutScale scale, Band band)
    {
        (LayoutAnswer layout, double mm) = (scene.Layout, scale.Mm);
        var words = new OrderUnits(scene.Units, scene.Language);
        double before = RulerRoom + FabricLayer.Selvedge;
        var corner = new Spot((scale.Turned ? 4 : before) * mm, (scale.Turned ? Above + 7 + FabricLayer.Selvedge : Above) * mm);
        var view = new FabricView(layout.Width, band.From, band.To, scale.Turned, corner);
        List<PlacedPiece> placed = PlacedPieces.In(scene, band, view, mm);
        Legend legend = LayoutLegend.For(scene, placed, band != Band.Whole(layout));
        double below = scale.Turned ? BoltRoom : 3;
        double beside = scale.Turned ? 12 : BoltRoom;
        var size = new Spot(
            Math.Max(LayoutScale.PageWidth * mm, view.Frame.Right + beside * mm),
            view.Frame.Bottom + (below + legend.Height + 1) * mm
        );
        var canvas = new Canvas(
            size,
            mm,
            scene.IdPrefix,
            words.Say(DrawingTexts.LayoutOf(layout.Label ?? layout.Fabric)),
            words.Say(LayoutWords.Description(scene, placed)),
            ("data-fabric", layout.Fabric),
            ("data-units", words.Symbol),
            ("data-width", Canvas.Exact(layout.Width)),
            ("data-length", Canvas.Exact(layout.Length)),
            ("data-from", Canvas.Exact(band.From)),
            ("data-to", Canvas.Exact(band.To))
        );
        Header(canvas, scene, band);
        FabricLayer.Draw(canvas, view, layout.Length);
        Pieces(canvas, view, scene, placed, band != Band.Whole(layout));
        SaleRuler.Draw(canvas, view, words, SoldUnit(scene), FabricLayer.Selvedge + 0.6);
        FabricLayer.DrawBoltArrow(canvas, view, words.Say(DrawingTexts.BoltWay));
        legend.Draw(canvas, new Spot(0, view.Frame.Bottom + below * mm));
        return canvas.Finish();
    }

    private static void Header(Canvas canvas, LayoutScene scene, Band band)
    {
        double mm = canvas.Mm;
        var words = new OrderUnits(scene.Units, scene.Language);
        string title = TextWidth.Shorten(PrintableText.Of(words.Say(LayoutWords.Title(scene))), LayoutScale.PageWidth / 3.6, true);
        string facts = TextWidth.Shorten(PrintableText.Of(words.Say(LayoutWords.Facts(scene, band))), LayoutScale.PageWidth / 2.8);
        canvas.Text(new Spot(0, 4 * mm), title, 3.6 * mm, bold: true);
        canvas.Text(new Spot(0, 8.6 * mm), facts, 2.8 * mm);
    }

    // A part of a layout is clipped, outside the turned group and so in the drawing's own coordinates; the whole needs none.
    private static void Pieces(Canvas canvas, FabricView view, LayoutScene scene, List<PlacedPiece> placed, bool clipped)
    {
        if (clipped)
        {
            canvas.Open("clipPath", ("id", $"{canvas.Id}-band"));
            canvas.Rectangle(view.Frame);
            canvas.Close();
        }

        canvas.Open("g", clipped ? [("clip-path", $"url(#{canvas.Id}-band)")] : []);
        canvas.Open(
            "g",
            ("class", "fabric"),
            ("transform", view.Transform),
            ("fill", "#fff"),
            ("stroke", Stroke.Cut.Colour),
            Canvas.Attribute("stroke-width", Stroke.Cut.Width * canvas.Mm)
        );
        placed.ForEach(piece => piece.DrawOutline(canvas));
        canvas.Close();
        scene.Lattice?.Draw(canvas, view);
        canvas.Close();
        placed.ForEach(piece => piece.DrawCaption(canvas));
    }

    private static SaleUnit SoldUnit(LayoutScene scene) => scene.Yardage?.SoldUnit ?? (scene.Units == Units.In ? SaleUnit.Yd : SaleUnit.M);
}
