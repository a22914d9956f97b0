using CushionService.Contract.Answers;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Documents.Drawings;

/// <summary>Draws the marks of a piece, each kind with a shape of its own, and a letter beside each.</summary>
internal static class MarkSigns
{
    private const double Type = 2.8;
    private const double Reach = 1.3;

    /// <summary>Draws the marks, each under the letter of its place in the list.</summary>
    /// <param name="canvas">The drawing.</param>
    /// <param name="view">The piece in the drawing.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="shown">Marks outside this box are left out.</param>
    /// <param name="lettered">How many of them, from the first, have a letter.</param>
    /// <returns>The boxes of the signs and letters, in user units.</returns>
    public static IReadOnlyList<Box> Draw(Canvas canvas, FabricView view, PieceAnswer piece, Box shown, int lettered = int.MaxValue)
    {
        List<Box> taken = [];
        List<(string Letter, Spot At, Spot Inward)> anchors = [];
        Spot[] outline = [.. Outline.Of(piece).Select(corner => view.At(corner.X, corner.Y))];
        for (int i = 0; i < piece.Marks.Count; i++)
        {
            MarkAnswer mark = piece.Marks[i];
            Spot at = view.At(mark.X, mark.Y);
            Spot end = view.At(mark.ToX ?? mark.X, mark.ToY ?? mark.Y);
            Box sign = Box.Around([at, end]).Grown(Reach * canvas.Mm);
            if (!sign.Overlaps(shown))
            {
                continue;
            }

            Spot inward = mark.Kind is MarkKind.Notch or MarkKind.DoubleNotch or MarkKind.ZipperStop or MarkKind.SeamDot
                ? NearestEdge.Inward(outline, at)
                : (end - at).Unit().Turned();
            Sign(canvas, mark.Kind, at, end, inward);
            taken.Add(sign);
            if (i < lettered)
            {
                anchors.Add((MarkWords.Letter(i), 0.5 * (at + end), inward));
            }
        }

        foreach ((string letter, Spot at, Spot inward) in anchors)
        {
            if (LetterSpot.Near(at, inward, LetterSize(letter, canvas.Mm), shown, taken) is { } box)
            {
                taken.Add(box);
                canvas.Text(box.Centre + new Spot(0, 0.35 * Type * canvas.Mm), letter, Type * canvas.Mm, "middle");
            }
        }

        return taken;
    }

    private static Spot LetterSize(string letter, double mm) => new(TextWidth.Of(letter) * Type * mm, Type * mm);

    private static void Sign(Canvas canvas, MarkKind kind, Spot at, Spot end, Spot inward)
    {
        double mm = canvas.Mm;
        canvas.OpenStroked(
            kind switch
            {
                MarkKind.FoldLine => Stroke.Fold,
                MarkKind.CutLine => Stroke.Cut,
                _ => Stroke.Mark,
            }
        );
        if (at != end)
        {
            canvas.Line(at, end);
        }

        switch (kind)
        {
            case MarkKind.Notch or MarkKind.DoubleNotch:
                Spot half = 0.9 * mm * inward.Turned();
                foreach (Spot tip in kind == MarkKind.Notch ? [at] : (Spot[])[at - 1.3 * half, at + 1.3 * half])
                {
                    canvas.Polygon([tip - half, tip + half, tip + 2.2 * mm * inward], ("fill", Stroke.Ink));
                }

                break;
            case MarkKind.ZipperStop:
                canvas.Line(at, at + 3 * mm * inward);
                break;
            case MarkKind.TieEnd:
                double bar = Reach * mm;
                canvas.Line(at + new Spot(-bar, 0), at + new Spot(bar, 0));
                canvas.Line(at + new Spot(0, -bar), at + new Spot(0, bar));
                break;
            case MarkKind.Tuft or MarkKind.Button:
                Cross(canvas, at, 0.9 * mm);
                break;
            case MarkKind.Vent:
                canvas.Rectangle(Box.Around([at]).Grown(0.8 * mm));
                break;
            case MarkKind.HandleEnd:
                double arm = Reach * mm;
                canvas.Rectangle(new Box(at.X - arm, at.Y - arm, 2 * arm, 2 * arm));
                Cross(canvas, at, arm);
                break;
            case MarkKind.SeamDot:
                canvas.Polygon(
                    [.. Enumerable.Range(0, 8).Select(i => at + 0.7 * mm * new Spot(Math.Cos(Math.PI * i / 4), Math.Sin(Math.PI * i / 4)))],
                    ("fill", Stroke.Ink)
                );
                break;
            case MarkKind.UpArrow:
                Spot shaft = 1.6 * mm * (end - at).Unit();
                canvas.Polygon([end, end - shaft + 0.5 * shaft.Turned(), end - shaft - 0.5 * shaft.Turned()], ("fill", Stroke.Ink));
                break;
        }

        canvas.Close();
    }

    // Two strokes from corner to corner of a square.
    private static void Cross(Canvas canvas, Spot at, double reach)
    {
        canvas.Line(at + new Spot(-reach, -reach), at + new Spot(reach, reach));
        canvas.Line(at + new Spot(-reach, reach), at + new Spot(reach, -reach));
    }
}
