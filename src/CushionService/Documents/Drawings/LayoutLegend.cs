using CushionService.Contract.Answers;

namespace CushionService.Documents.Drawings;

/// <summary>What the signs of a layout mean, and which pieces are in it by number alone.</summary>
internal static class LayoutLegend
{
    public static Legend For(LayoutScene scene, IReadOnlyList<PlacedPiece> placed, bool continues)
    {
        var units = new OrderUnits(scene.Units);
        List<LegendItem> items =
        [
            new("waste", (canvas, box) => Area(canvas, box, Hatch.Waste)),
            new("selvedge, not to scale", (canvas, box) => Area(canvas, box, Hatch.Selvedge)),
        ];
        if (continues)
        {
            items.Add(new("the fabric goes on in the next part", (canvas, box) => Line(canvas, box, Stroke.Torn)));
        }

        if (scene.Lattice is not null)
        {
            items.Add(new("repeat of the motif", (canvas, box) => Line(canvas, box, Stroke.Lattice)));
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
                    GrainArrow.Meaning(rotation),
                    (canvas, box) => GrainArrow.Draw(canvas, box.Centre, new Spot(0, -1), box.Height - 0.4 * canvas.Mm, rotation)
                )
            );
        }

        items.AddRange(
            placed
                .Where(piece => piece.Caption.Label is not { Named: true })
                .GroupBy(piece => piece.Number, StringComparer.Ordinal)
                .Select(copies => new LegendItem(Entry(units, [.. copies])))
        );
        return new Legend(items, LayoutScale.PageWidth);
    }

    // A piece that is drawn by its number, or too small even for that: then where its copies lie, as far as the line holds them.
    private static string Entry(OrderUnits units, List<PlacedPiece> copies)
    {
        PieceAnswer piece = copies[0].Piece;
        string entry = $"{copies[0].Number}: {piece.Label ?? piece.Id}, {units.Size(piece.Width, piece.Length)}";
        List<PlacementAnswer> bare = [.. copies.Where(copy => copy.Caption.Label is null).Select(copy => copy.Placement)];
        return bare.Count == 0
            ? entry
            : FormattableString.Invariant($"{entry}; too small for its number ({bare.Count}), across and along: ")
                + string.Join("; ", bare.Select(at => $"{units.Number(at.X)}, {units.Text(at.Y)}"));
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
