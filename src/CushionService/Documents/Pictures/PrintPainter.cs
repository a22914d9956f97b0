using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>Draws the print of a fabric on a patch: stripes, bands, or a motif at every place of the lattice, each cut off at the edge of
/// the patch; and the hatch that tells a fabric without a colour from others.</summary>
/// <param name="sketch">Takes the shapes.</param>
/// <param name="detail">How much is drawn: 0 for all, and less the higher it is.</param>
internal sealed class PrintPainter(Sketch sketch, int detail)
{
    /// <summary>A detail of no prints and no hatches, to measure by.</summary>
    public const int Bare = 9;

    // Shares of the repeat that a stripe and a motif take (a choice of ours: the fabric's own design is not known).
    private const double StripeShare = 0.34;
    private const double MotifShare = 0.3;
    private const double HatchPitch = 17;
    private static readonly Ink Stripe = new(Tint.Print, 0.3);
    private static readonly Ink Motif = new(Tint.Print, 0.42);
    private static readonly Ink Thread = new(null, 0.35, Tint.Print, 1.4);
    private static readonly Ink Hatching = new(null, 0.7, Tint.Print, 1);

    // Pointed the way that the fabric runs, counter-clockwise.
    private static readonly PlanePoint[] Diamond = [new(0, -1), new(0.6, 0), new(0, 1), new(-0.6, 0)];
    private static readonly PlanePoint[] Leaf =
    [
        new(0, -1),
        new(0.4, -0.62),
        new(0.56, -0.1),
        new(0.36, 0.5),
        new(0, 1),
        new(-0.36, 0.5),
        new(-0.56, -0.1),
        new(-0.4, -0.62),
    ];

    // The closest that stripes and motifs are drawn, in units, and the most of them on one patch.
    private double Closest => detail >= 2 ? 14 : 6;

    private int Most =>
        detail switch
        {
            0 => 260,
            1 => 140,
            2 => 60,
            _ => 0,
        };

    /// <summary>Draws the print.</summary>
    /// <param name="seen">A part of a patch.</param>
    /// <param name="phase">Where the motif lies on its panel, in the panel's own coordinates.</param>
    public void Print(VisiblePatch seen, PrintPhase phase)
    {
        PrintPhase moved = phase with { Motif = phase.Motif + seen.Part.Shift };
        switch (moved)
        {
            case { Across: { } across, Along: { } along }:
                Motifs(seen, moved.Motif, across, along);
                break;
            case { Across: { } across }:
                Stripes(seen, moved.Motif, across);
                break;
            case { Along: { } along }:
                Stripes(seen, moved.Motif, along);
                break;
        }
    }

    /// <summary>Draws a hatch.</summary>
    /// <param name="seen">A part of a patch.</param>
    /// <param name="hatch">Its number, from 1; 0 for none.</param>
    public void Hatch(VisiblePatch seen, int hatch)
    {
        double pitch = HatchPitch / sketch.Scale;
        (PlanePoint Way, double Pitch)[] lines = hatch switch
        {
            1 => [(Turned(0.785), pitch)],
            2 => [(Turned(-0.785), pitch), (Turned(0.785), pitch)],
            3 => [(Turned(0), pitch)],
            4 => [(Turned(1.571), pitch)],
            _ => [],
        };
        foreach ((PlanePoint way, double step) in detail > 2 ? [] : lines)
        {
            (double from, double to) = Reach(seen.Domain, way);
            // At multiples of the pitch on the whole panel, so that a hatch runs on from patch to patch.
            for (double at = Math.Ceiling(from / step) * step; at < to; at += step)
            {
                Lines(seen, way, at, Hatching);
            }
        }
    }

    private static PlanePoint Turned(double turn) => new(Math.Cos(turn), Math.Sin(turn));

    private static (double From, double To) Reach(IReadOnlyList<PlanePoint> domain, PlanePoint way)
    {
        (double from, double to) = (double.MaxValue, double.MinValue);
        foreach (PlanePoint point in domain)
        {
            double at = point.Dot(way);
            (from, to) = (Math.Min(from, at), Math.Max(to, at));
        }

        return (from, to);
    }

    // Across the way of the step: a stripe's middle is on the motif.
    private void Stripes(VisiblePatch seen, PlanePoint motif, PlanePoint step)
    {
        double pitch = step.Size,
            wide = StripeShare * pitch / 2;
        PlanePoint way = 1 / pitch * step;
        (double from, double to) = Reach(seen.Domain, way);
        double first = motif.Dot(way);
        int low = (int)Math.Floor((from - first - wide) / pitch),
            high = (int)Math.Ceiling((to - first + wide) / pitch);
        // Stripes that lie too close to be told apart are left out, rather than drawn as a grey field.
        if (pitch * sketch.Scale < Closest || high - low > Most)
        {
            return;
        }

        for (int i = low; i <= high; i++)
        {
            double middle = first + i * pitch;
            if (high - low > 40 || detail > 0)
            {
                Lines(seen, way, middle, Thread with { Width = Math.Max(1.4, 2 * wide * sketch.Scale * 0.8) });
            }
            else
            {
                foreach (IReadOnlyList<PlanePoint> band in PlaneParts.Between(seen.Domain, way, middle - wide, middle + wide))
                {
                    Polygon(seen, band, Stripe);
                }
            }
        }
    }

    private void Motifs(VisiblePatch seen, PlanePoint motif, PlanePoint across, PlanePoint along)
    {
        double size = MotifShare * Math.Min(across.Size, along.Size),
            area = Math.Abs(across.X * along.Y - across.Y * along.X),
            count = PlanePolygon.Area(seen.Domain) / area;
        if (Math.Min(across.Size, along.Size) * sketch.Scale < Closest || count > Most)
        {
            return;
        }

        PlanePoint u = size / 2 / along.Size * along,
            v = new(u.Y, -u.X);
        (PlanePoint low, PlanePoint high) = PlanePolygon.Extent(seen.Domain);
        PlanePoint[] corners = [low, high, new(low.X, high.Y), new(high.X, low.Y)];
        (double I, double J)[] steps = [.. corners.Select(corner => Steps(corner - motif, across, along))];
        for (int i = (int)Math.Floor(steps.Min(step => step.I)) - 1; i <= steps.Max(step => step.I) + 1; i++)
        {
            for (int j = (int)Math.Floor(steps.Min(step => step.J)) - 1; j <= steps.Max(step => step.J) + 1; j++)
            {
                PlanePoint at = motif + i * across + j * along;
                // The lattice leans where the fabric has a drop, so steps within the corners' range may lie outside the
                // patch.
                bool near = at.X > low.X - size && at.X < high.X + size && at.Y > low.Y - size && at.Y < high.Y + size;
                if (near)
                {
                    Sign(seen, at, u, v);
                }
            }
        }
    }

    // A leaf that points the way the fabric runs: so it shows which way is up.
    private void Sign(VisiblePatch seen, PlanePoint at, PlanePoint up, PlanePoint side)
    {
        PlanePoint[] shape = [.. (detail == 0 ? Leaf : Diamond).Select(point => at + point.Y * up + point.X * side)];
        double inside = PlanePolygon.Inside(seen.Domain, at);
        if (inside > up.Size)
        {
            Polygon(seen, shape, Motif);
        }
        else if (inside > -up.Size)
        {
            Polygon(seen, PlanePolygon.Within(seen.Domain, PlanePolygon.Area(shape) > 0 ? shape : [.. shape.Reverse()]), Motif);
        }
    }

    private void Polygon(VisiblePatch seen, IReadOnlyList<PlanePoint> polygon, Ink ink)
    {
        if (polygon.Count > 2)
        {
            sketch.Fill(seen.Seen(polygon, true, sketch.Camera), ink);
        }
    }

    // Where a line crosses the patch: from its crossings with the outline, two by two.
    private void Lines(VisiblePatch seen, PlanePoint way, double at, Ink ink)
    {
        PlanePoint run = new(-way.Y, way.X);
        var crossings = new List<double>();
        for (int i = 0; i < seen.Domain.Count; i++)
        {
            PlanePoint from = seen.Domain[i],
                to = seen.Domain[(i + 1) % seen.Domain.Count];
            (double a, double b) = (from.Dot(way) - at, to.Dot(way) - at);
            if (a > 0 != b > 0)
            {
                crossings.Add((from + a / (a - b) * (to - from)).Dot(run));
            }
        }

        crossings.Sort();
        for (int i = 0; i + 1 < crossings.Count; i += 2)
        {
            PlanePoint foot = at * way;
            sketch.Draw(seen.Seen([foot + crossings[i] * run, foot + crossings[i + 1] * run], false, sketch.Camera), ink);
        }
    }

    // How many steps across and along lead to a point: the two equations are solved by Cramer's rule (general
    // mathematics).
    private static (double I, double J) Steps(PlanePoint at, PlanePoint across, PlanePoint along)
    {
        double area = across.X * along.Y - across.Y * along.X;
        return ((at.X * along.Y - at.Y * along.X) / area, (across.X * at.Y - across.Y * at.X) / area);
    }
}
