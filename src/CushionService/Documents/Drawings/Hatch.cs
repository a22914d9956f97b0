namespace CushionService.Documents.Drawings;

/// <summary>Lines that say what an area is: slanting for waste, across for selvedge. Drawn line by line rather than as a pattern fill,
/// which printers' software turns into pale pictures.</summary>
internal static class Hatch
{
    private const double Pitch = 2.4;
    private const double SelvedgePitch = 1;

    /// <summary>Hatches waste: lines rising to the right.</summary>
    /// <param name="canvas">The drawing.</param>
    /// <param name="box">In user units; lines end at its sides.</param>
    public static void Waste(Canvas canvas, Box box)
    {
        // Measured along the side of the box, the distance of lines at 45° is √2 times that across them.
        double pitch = Pitch * Math.Sqrt(2) * canvas.Mm;
        canvas.OpenStroked(Stroke.Hatch);
        for (double start = pitch / 2; start < box.Width + box.Height; start += pitch)
        {
            Spot low = start < box.Height ? new Spot(box.X, box.Y + start) : new Spot(box.X + start - box.Height, box.Bottom);
            Spot high = start < box.Width ? new Spot(box.X + start, box.Y) : new Spot(box.Right, box.Y + start - box.Width);
            canvas.Line(low, high);
        }

        canvas.Close();
    }

    /// <summary>Hatches a selvedge: short lines across its narrow way.</summary>
    /// <param name="canvas">The drawing.</param>
    /// <param name="box">In user units.</param>
    public static void Selvedge(Canvas canvas, Box box)
    {
        double pitch = SelvedgePitch * canvas.Mm;
        canvas.OpenStroked(Stroke.Hatch);
        for (double along = pitch / 2; along < Math.Max(box.Width, box.Height); along += pitch)
        {
            if (box.Width > box.Height)
            {
                canvas.Line(new Spot(box.X + along, box.Y), new Spot(box.X + along, box.Bottom));
            }
            else
            {
                canvas.Line(new Spot(box.X, box.Y + along), new Spot(box.Right, box.Y + along));
            }
        }

        canvas.Close();
    }
}
