using CushionService.Contract.Answers;
using CushionService.Engine.Patterns;

namespace CushionService.Documents.Drawings;

/// <summary>Draws the marks of a piece, each kind with a shape of its own, and a letter beside each.</summary>
internal static class MarkSigns
{
    private const double Type = 2.8;
    private const double Reach = 1.3;

    /// <summary>Draws the marks.</summary>
    /// <returns>The boxes of the signs and letters, in user units.</returns>
    public static IReadOnlyList<Box> Draw(Canvas canvas, ClothView view, PieceAnswer piece)
    {
        List<Box> taken = [];
        List<(Spot At, Spot Inward)> anchors = [];
        Spot[] outline = [.. Outline.Of(piece).Select(corner => view.At(corner.X, corner.Y))];
        foreach (MarkAnswer mark in piece.Marks)
        {
            Spot at = view.At(mark.X, mark.Y);
            Spot end = view.At(mark.ToX ?? mark.X, mark.ToY ?? mark.Y);
            Spot inward = mark.Kind == MarkKind.Notch ? NearestEdge.Inward(outline, at) : (end - at).Unit().Turned();
            Sign(canvas, mark.Kind, at, end, inward);
            anchors.Add((0.5 * (at + end), inward));
            taken.Add(Box.Around([at, end]).Grown(Reach * canvas.Mm));
        }

        for (int i = 0; i < anchors.Count; i++)
        {
            string letter = MarkWords.Letter(i);
            if (LetterSpot.Near(anchors[i].At, anchors[i].Inward, LetterSize(letter, canvas.Mm), view.Frame.Grown(6 * canvas.Mm), taken) is { } box)
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
        canvas.OpenStroked(kind == MarkKind.FoldLine ? Stroke.Fold : Stroke.Mark);
        if (at != end)
        {
            canvas.Line(at, end);
        }

        switch (kind)
        {
            case MarkKind.Notch:
                Spot half = 0.9 * mm * inward.Turned();
                canvas.Polygon([at - half, at + half, at + 2.2 * mm * inward], ("fill", Stroke.Ink));
                break;
            case MarkKind.HandleEnd:
                double arm = Reach * mm;
                canvas.Rectangle(new Box(at.X - arm, at.Y - arm, 2 * arm, 2 * arm));
                canvas.Line(at + new Spot(-arm, -arm), at + new Spot(arm, arm));
                canvas.Line(at + new Spot(-arm, arm), at + new Spot(arm, -arm));
                break;
        }

        canvas.Close();
    }
}
