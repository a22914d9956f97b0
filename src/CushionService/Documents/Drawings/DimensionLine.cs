namespace CushionService.Documents.Drawings;

/// <summary>A size with its line: a bar at each end and the figure in a gap of the line, or beside it where it is short.</summary>
internal static class DimensionLine
{
    private const double Type = 3;
    private const double Bar = 1.5;

    /// <summary>Draws a level line from left to right, or an upright one from the bottom up.</summary>
    /// <param name="canvas">The drawing.</param>
    /// <param name="from">Its left or its lower end, in user units.</param>
    /// <param name="to">Its right or its upper end.</param>
    /// <param name="figure">The size in words.</param>
    public static void Draw(Canvas canvas, Spot from, Spot to, string figure)
    {
        double mm = canvas.Mm;
        bool upright = from.X == to.X;
        Spot along = (to - from).Unit();
        Spot bar = Bar * mm * along.Turned();
        double length = (to - from).Size;
        double gap = (TextWidth.Of(figure) * Type + 2) * mm;
        bool inside = gap + 4 * mm < length;
        Spot middle = 0.5 * (from + to);
        canvas.OpenStroked(Stroke.Fine);
        canvas.Line(from - bar, from + bar);
        canvas.Line(to - bar, to + bar);
        if (inside)
        {
            canvas.Line(from, middle - gap / 2 * along);
            canvas.Line(middle + gap / 2 * along, to);
        }
        else
        {
            canvas.Line(from, to);
        }

        canvas.Close();
        double drop = 0.35 * Type * mm;
        if (inside)
        {
            canvas.Text(middle + (upright ? new Spot(drop, 0) : new Spot(0, drop)), figure, Type * mm, "middle", upwards: upright);
        }
        else if (upright)
        {
            Spot at = middle + new Spot(-1.2 * mm, drop);
            // Beside the left edge of the page there may be less room than the figure needs: then it is set smaller,
            // never cut off.
            canvas.Text(at, figure, Math.Min(Type * mm, at.X / TextWidth.Of(figure)), "end");
        }
        else
        {
            canvas.Text(middle + new Spot(0, (Bar + Type) * mm), figure, Type * mm, "middle");
        }
    }
}
