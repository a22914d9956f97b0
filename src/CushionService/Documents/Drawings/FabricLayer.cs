namespace CushionService.Documents.Drawings;

/// <summary>The fabric under the pieces: hatched all over, so that what no piece covers reads as waste, with its selvedges, its start or
/// end where they show, and the direction of the bolt.</summary>
internal static class FabricLayer
{
    /// <summary>Width of a selvedge as drawn, in millimetres: a sign, not to scale, for the answer holds the usable width only.</summary>
    public const double Selvedge = 2.2;

    /// <summary>Draws the fabric.</summary>
    public static void Draw(Canvas canvas, FabricView view, double length)
    {
        double selvedge = Selvedge * canvas.Mm;
        Hatch.Waste(canvas, view.Frame);
        Hatch.Selvedge(canvas, view.At(-selvedge, view.From, selvedge, view.To - view.From));
        Hatch.Selvedge(canvas, view.At(view.Width, view.From, selvedge, view.To - view.From));
        canvas.OpenStroked(Stroke.Edge);
        foreach (double x in (ReadOnlySpan<double>)[-selvedge, 0, view.Width, view.Width + selvedge])
        {
            canvas.Line(view.At(x, view.From), view.At(x, view.To));
        }

        canvas.Close();
        CrossLine(canvas, view, view.From, view.From > 0);
        CrossLine(canvas, view, view.To, view.To < length);
    }

    /// <summary>Draws an arrow beside the right side of the fabric: the way the bolt runs.</summary>
    /// <param name="canvas">The drawing.</param>
    /// <param name="view">The fabric in it.</param>
    /// <param name="words">What the arrow says, in the reader's language; left out where it is longer than the arrow.</param>
    public static void DrawBoltArrow(Canvas canvas, FabricView view, string words)
    {
        const double Type = 2.3;
        double mm = canvas.Mm;
        double run = Math.Min(view.To - view.From, 40 * mm);
        Spot foot = view.At(view.Width + (Selvedge + 3) * mm, view.From);
        GrainArrow.Draw(canvas, foot + run / 2 * view.Up, view.Up, run, Nesting.Rotations.None);
        if (TextWidth.Of(words) * Type * mm <= run)
        {
            Spot beside = view.At(view.Width + (Selvedge + 6.4) * mm, view.From);
            canvas.Text(beside + run / 2 * view.Up, words, Type * mm, "middle", upwards: !view.Turned);
        }
    }

    private static void CrossLine(Canvas canvas, FabricView view, double y, bool torn)
    {
        canvas.OpenStroked(torn ? Stroke.Torn : Stroke.Cut);
        double selvedge = Selvedge * canvas.Mm;
        canvas.Line(view.At(-selvedge, y), view.At(view.Width + selvedge, y));
        canvas.Close();
    }
}
