using System.Globalization;
using CushionService.Documents.Drawings;
using CushionService.Nesting;

namespace CushionService.Documents.TrueSize;

/// <summary>Draws a sheet of true-size patterns: cut line, seam line, marks, names, and a measure to check the printer by.</summary>
internal static class PatternDrawing
{
    private const double Title = 3;
    private const double Text = 2.6;

    /// <summary>The drawing of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="count">How many sheets there are.</param>
    /// <param name="units">The order's unit and the reader's language.</param>
    /// <returns>A well-formed SVG document, whose user unit is the millimetre.</returns>
    public static string Draw(PatternSheet sheet, int count, OrderUnits units)
    {
        string number = units.Say(PatternTexts.Sheet(sheet.Number, count));
        string[] pieces =
        [
            .. sheet.Parts.SelectMany(part => (PatternPiece[])[part.Piece, .. part.Piece.Same]).Select(piece => Whole(piece.Number)),
        ];
        string names = units.Say(PatternTexts.Pieces(pieces.Length, pieces));
        var canvas = new Canvas(
            sheet.Size,
            1,
            $"sheet-{Whole(sheet.Number)}",
            units.Say(PatternTexts.SheetTitle(number)),
            names,
            [
                .. sheet.Parts[0].Tile is { } tile
                    ? (ReadOnlySpan<(string, string)>)[("data-row", Whole(tile.Row)), ("data-column", Whole(tile.Column))]
                    : [],
            ]
        );
        // Lines run on into the overlap, so that the next sheet can be laid on them.
        var net = new Box(TileGrid.Margin, TileGrid.Margin, sheet.Size.X - 2 * TileGrid.Margin, sheet.Size.Y - 2 * TileGrid.Margin);
        Box shown = net.Grown(TileGrid.Overlap);
        canvas.Open("clipPath", ("id", $"{canvas.Id}-shown"));
        canvas.Rectangle(shown);
        canvas.Close();
        canvas.Open("g", ("clip-path", $"url(#{canvas.Id}-shown)"));
        foreach (PatternPart part in sheet.Parts)
        {
            Draw(canvas, part, shown, units);
        }

        canvas.Close();
        if (sheet.Parts[0].Tile is { } torn)
        {
            RegisterMarks.Draw(canvas, sheet.Parts[0]);
            string place = units.Say(PatternTexts.TilePlace(torn.Row + 1, torn.Grid.Rows, torn.Column + 1, torn.Grid.Columns, number));
            Head(canvas, sheet, TitleOf(sheet.Parts[0].Piece, units), place);
            var sign = new Spot(sheet.Size.X - TileGrid.Margin - 14, 7);
            Rotations rotation = sheet.Parts[0].Piece.Drawn.Rotation;
            GrainArrow.Draw(canvas, sign, sheet.Parts[0].View.Up, 6, rotation);
            canvas.Text(sign + new Spot(-5, 1), units.Say(GrainArrow.Meaning(rotation)), Text, "end");
        }
        else
        {
            Head(canvas, sheet, names, number);
        }

        CheckLine(canvas, sheet.Size, units);
        return canvas.Finish();
    }

    private static void Draw(Canvas canvas, PatternPart part, Box shown, OrderUnits units)
    {
        PatternPiece piece = part.Piece;
        canvas.Open("g", ("class", "fabric"), ("transform", part.View.Transform), ("fill", "none"), ("stroke", Stroke.Ink));
        canvas.Element("path", ("class", "cut"), ("d", CurvePath.Of(piece.Lines.Cut)), ("stroke-width", "0.4"));
        if (!piece.Lines.Finished.IsEmpty)
        {
            canvas.Element(
                "path",
                ("class", "seam"),
                ("d", CurvePath.Of(piece.Lines.Finished)),
                ("stroke-width", "0.25"),
                ("stroke-dasharray", "3 1.5")
            );
        }

        canvas.Close();
        MarkSigns.Draw(canvas, part.View, piece.Drawn, shown);
        if (part.Tile is null)
        {
            Label(canvas, part, units);
        }
    }

    // In the middle of the piece, turned with it, as large as there is room.
    private static void Label(Canvas canvas, PatternPart part, OrderUnits units)
    {
        Box frame = part.View.Frame;
        bool upwards = frame.Height > 2 * frame.Width;
        (double along, double across) = upwards ? (frame.Height, frame.Width) : (frame.Width, frame.Height);
        string title = TitleOf(part.Piece, units);
        // In millimetres: 5 where there is room, and the number alone where the title would be smaller than 1.6.
        double type = Math.Min(5, Math.Min(0.8 * along / TextWidth.Of(title, true), across / 5));
        if (type < 1.6)
        {
            (title, type) = (Whole(part.Piece.Number), Math.Min(3, across / 2));
        }

        Spot down = upwards ? new Spot(1, 0) : new Spot(0, 1);
        double arrow = Math.Min(20, 0.3 * (part.View.Turned ? frame.Width : frame.Height));
        double length = TextWidth.Of(title, true) * type + 2;
        double height = 2 * (type + arrow);
        Spot centre = Inside(part, upwards ? new Spot(height, length) : new Spot(length, height));
        canvas.Text(centre - 0.6 * type * down, title, type, "middle", true, upwards);
        GrainArrow.Draw(canvas, centre + (1 + 0.6 * arrow) * down, part.View.Up, arrow, part.Piece.Drawn.Rotation);
    }

    // The spot nearest to the middle where a label of that size lies wholly on the piece; the middle where there is none.
    private static Spot Inside(PatternPart part, Spot size)
    {
        const int steps = 8;
        Box frame = part.View.Frame;
        Spot[] outline = [.. part.Piece.Corners(part.View)];
        return Enumerable
            .Range(1, steps - 1)
            .SelectMany(i =>
                Enumerable.Range(1, steps - 1).Select(j => new Spot(frame.X + frame.Width * i / steps, frame.Y + frame.Height * j / steps))
            )
            .OrderBy(spot => (spot - frame.Centre).Size)
            .Where(spot => Outline.Holds(outline, new Box(spot.X - size.X / 2, spot.Y - size.Y / 2, size.X, size.Y)))
            .DefaultIfEmpty(frame.Centre)
            .First();
    }

    private static string TitleOf(PatternPiece piece, OrderUnits units) =>
        units.Say(
            PatternTexts.PieceTitle(
                piece.Number,
                PrintableText.Of(piece.Answer.Label ?? piece.Answer.Id),
                units.Size(piece.Answer.Width, piece.Answer.Length),
                piece.Answer.Quantity,
                [.. piece.Same.Select(same => PatternTexts.CutAlso(same.Number, same.Answer.Quantity))]
            )
        );

    private static void Head(Canvas canvas, PatternSheet sheet, string title, string place)
    {
        double room = sheet.Size.X - 2 * TileGrid.Margin - 50;
        canvas.Text(new Spot(TileGrid.Margin + 8, 9), TextWidth.Shorten(title, room / Title, true), Title, bold: true);
        canvas.Text(new Spot(TileGrid.Margin + 8, 5.5), place, Text);
    }

    // On every sheet, since a printer may scale any of them.
    private static void CheckLine(Canvas canvas, Spot size, OrderUnits units)
    {
        const int check = 50;
        var from = new Spot(TileGrid.Margin + 8, size.Y - 7);
        canvas.OpenStroked(Stroke.Mark);
        canvas.Line(from, from + new Spot(check, 0));
        canvas.Line(from - new Spot(0, 1.5), from + new Spot(0, 1.5));
        canvas.Line(from + new Spot(check, -1.5), from + new Spot(check, 1.5));
        canvas.Close();
        canvas.Text(from + new Spot(check + 3, 1), units.Say(PatternTexts.MustMeasure(check)), Text);
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
