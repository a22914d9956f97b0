using CushionService.Contract.Answers;

namespace CushionService.Documents.Drawings;

/// <summary>What the signs of a layout mean, and which pieces are in it by number alone.</summary>
internal static class LayoutLegend
{
    /// <summary>The legend of a drawing: only signs that are in it, and the pieces whose whole name did not fit.</summary>
    /// <param name="scene">What is drawn.</param>
    /// <param name="placed">The placements as they are drawn.</param>
    /// <param name="continues">Whether the drawing is a part of the layout, whose torn edge is explained.</param>
    public static Legend For(LayoutScene scene, IReadOnlyList<PlacedPiece> placed, bool continues)
    {
        var units = new OrderUnits(scene.Units, scene.Language);
        List<LegendItem> items =
        [
            new(units.Say(DrawingTexts.Waste), (canvas, box) => Area(canvas, box, Hatch.Waste)),
            new(units.Say(DrawingTexts.Selvedge), (canvas, box) => Area(canvas, box, Hatch.Selvedge)),
        ];
        if (continues)
        {
            items.Add(new(units.Say(DrawingTexts.GoesOn), (canvas, box) => Line(canvas, box, Stroke.Torn)));
        }

        if (scene.Lattice is not null)
        {
            items.Add(new(units.Say(DrawingTexts.Repeat), (canvas, box) => Line(canvas, box, Stroke.Lattice)));
        }

        foreach (
            Nesting.Rotations rotation in placed
                .Where(piece => piece.Caption.Arrow > 0)
                .Select(piece => piece.Piece.Rotation)
                .Distinct()
                .Order()
        )
        {
            items.Add(
                new(
                    units.Say(GrainArrow.Meaning(rotation)),
                    (canvas, box) => GrainArrow.Draw(canvas, box.Centre, new Spot(0, -1), box.Height - 0.4 * canvas.Mm, rotation)
                )
            );
        }

        // A part alone names no piece among those of several cushions.
        bool several = placed.Select(piece => piece.Piece.Cushion).Distinct().Skip(1).Any();
        items.AddRange(
            placed
                .Where(piece => piece.Caption.Label is not { Named: true } label || (several && !label.IsWhole))
                .GroupBy(piece => piece.Number, StringComparer.Ordinal)
                .Select(copies => new LegendItem(Entry(units, [.. copies])))
        );
        return new Legend(items, LayoutScale.PageWidth);
    }

    // A piece that is drawn by its number, or too small even for that: then where its copies lie, as far as the line holds them.
    private static string Entry(OrderUnits units, List<PlacedPiece> copies)
    {
        PieceAnswer piece = copies[0].Piece;
        List<PlacementAnswer> bare = [.. copies.Where(copy => copy.Caption.Label is null).Select(copy => copy.Placement)];
        return units.Say(
            DrawingTexts.Entry(
                copies[0].Number,
                piece.Label ?? piece.Id,
                units.Size(piece.Width, piece.Length),
                bare.Count,
                [.. bare.Select(at => units.Say(DrawingTexts.Spot(units.Number(at.X), units.Text(at.Y))))]
            )
        );
    }

    private static void Area(Canvas canvas, Box box, Action<Canvas, Box> hatch)
    {
        Box area = box.Inset(0.8 * canvas.Mm);
        hatch(canvas, area);
        canvas.OpenStroked(Stroke.Fine);
        canvas.Rectangle(area);
        canvas.Close();
    }

    private static void Line(Canvas canvas, Box box, Stroke stroke)
    {
        canvas.OpenStroked(stroke);
        canvas.Line(new Spot(box.X, box.Centre.Y), new Spot(box.Right, box.Centre.Y));
        canvas.Close();
    }
}
