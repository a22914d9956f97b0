using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>Moves a panel's outline outward, edge by edge, by each edge's allowance.</summary>
/// <remarks>Corners are mitred: an edge between interior angles a and b grows by s (cot(a/2) + cot(b/2)) (general geometry). A point so
/// sharp that its mitre would reach further than two allowances is truncated there (common practice, no source). Arcs become chords that
/// never cut
/// inside: tangents round an outward arc, secants across a hollow one. Corners are
/// rounded outward to whole micrometres.</remarks>
internal static class OutlineOffset
{
    // All doubles below are in nanometres.
    internal const double Micrometre = 1000;

    // Rounding errors of this share of a micrometre do not push a corner outward by a whole one.
    private const double Noise = 1e-6;

    // A chord departs from its arc by at most 0.4 mm (a choice of ours, no source).
    private const double Flatness = 400_000;
    private const double LongestMitre = 2;

    // In radians: less is one line that goes on.
    internal const double SmoothTurn = 1e-3;

    /// <summary>The corners of the cut outline, counter-clockwise, in the panel's coordinates.</summary>
    /// <param name="panel">A panel, its outline counter-clockwise.</param>
    /// <returns>At least three corners for any outline with an area; the first need not belong to the first edge.</returns>
    public static List<Point> Of(Panel panel)
    {
        var lines = new List<Line>();
        foreach (Edge edge in panel.Edges)
        {
            double allowance = edge.Finish.Allowance.Nanometres;
            foreach (Segment segment in edge.Path)
            {
                Flatten(segment, allowance, lines);
            }
        }

        var corners = new List<Point>();
        for (var i = 0; i < lines.Count; i++)
        {
            Join(lines[i], lines[(i + 1) % lines.Count], corners);
        }

        return ArcReach.Of(panel) is { } reach ? [.. corners.Select(reach.Within)] : corners;
    }

    /// <summary>The area inside the cut outline.</summary>
    /// <param name="panel">A panel, its outline counter-clockwise.</param>
    public static Area AreaOf(Panel panel) => Polygon.Area([.. Of(panel)]);

    // An arc becomes straight cut lines, each known by the seam line beside it and its allowance.
    private static void Flatten(Segment segment, double allowance, List<Line> lines)
    {
        if (segment.IsStraight)
        {
            lines.Add(Line.Along(segment.From, segment.StartDirection, allowance));
            return;
        }

        double radius = segment.Radius,
            reach = segment.Sweep > 0 ? radius + allowance : Math.Max(radius - allowance, Micrometre);
        double widest = 2 * Math.Acos(Math.Max(0, 1 - (Flatness / reach)));
        // Chords no longer than the flatness lets them be, nor than an eighth of a turn; at least two, so that an arc
        // stays an arc.
        int count = Math.Max(2, (int)Math.Ceiling(Math.Abs(segment.Sweep) / Math.Min(widest, Math.PI / 4)));
        if (segment.Sweep > 0)
        {
            // Tangents at both ends and between: neighbours meet outside the arc.
            for (var i = 0; i <= count; i++)
            {
                double share = (double)i / count;
                lines.Add(Line.Along(segment.At(share), segment.StartDirection + (segment.Sweep * share), allowance));
            }
        }
        else
        {
            for (var i = 0; i < count; i++)
            {
                Segment part = new(segment.At((double)i / count), segment.At((double)(i + 1) / count));
                lines.Add(Line.Along(part.From, part.StartDirection, allowance));
            }
        }
    }

    // Adds the corner between two cut lines: their crossing, a step where one line goes on, or a truncated point.
    internal static void Join(Line one, Line next, List<Point> corners)
    {
        double cross = (one.DirectionX * next.DirectionY) - (one.DirectionY * next.DirectionX);
        double dot = (one.DirectionX * next.DirectionX) + (one.DirectionY * next.DirectionY);
        bool steps = Math.Abs(one.Allowance - next.Allowance) > 1;
        if (Math.Abs(cross) < (steps ? SmoothTurn : 1e-9) && dot > 0)
        {
            // One line goes on; where the allowance changes it steps. The ends of an arc are rounded, so that it may turn a little there.
            if (steps)
            {
                Add(next.SeamX + (one.Allowance * one.NormalX), next.SeamY + (one.Allowance * one.NormalY), one, next, corners);
                Add(next.X, next.Y, one, next, corners);
            }

            return;
        }

        // The seam corner, and how far the mitre reaches from it.
        double along = (((next.X - one.X) * next.DirectionY) - ((next.Y - one.Y) * next.DirectionX)) / cross;
        (double x, double y) = (one.X + (along * one.DirectionX), one.Y + (along * one.DirectionY));
        double seam = (((next.SeamX - one.SeamX) * next.DirectionY) - ((next.SeamY - one.SeamY) * next.DirectionX)) / cross;
        (double cornerX, double cornerY) = (one.SeamX + (seam * one.DirectionX), one.SeamY + (seam * one.DirectionY));
        double reach = Math.Sqrt(((x - cornerX) * (x - cornerX)) + ((y - cornerY) * (y - cornerY)));
        double longest = LongestMitre * Math.Max(one.Allowance, next.Allowance);
        if (cross > 0 && reach > longest + 1)
        {
            Truncate(one, next, (x, y), (cornerX, cornerY), reach, longest, corners);
            return;
        }

        Add(x, y, one, next, corners);
    }

    // Cuts the point off square to its middle line.
    private static void Truncate(
        Line one,
        Line next,
        (double X, double Y) tip,
        (double X, double Y) corner,
        double reach,
        double longest,
        List<Point> corners
    )
    {
        // The unit vector from the seam's corner to the mitre's tip: the point is cut off square to it.
        (double outX, double outY) = ((tip.X - corner.X) / reach, (tip.Y - corner.Y) / reach);
        double excess = reach - longest;
        double back = excess / ((one.DirectionX * outX) + (one.DirectionY * outY));
        double forth = excess / -((next.DirectionX * outX) + (next.DirectionY * outY));
        Add(tip.X - (back * one.DirectionX), tip.Y - (back * one.DirectionY), one, next, corners);
        Add(tip.X + (forth * next.DirectionX), tip.Y + (forth * next.DirectionY), one, next, corners);
    }

    // Outward is the way between the two lines' outsides.
    private static void Add(double x, double y, Line one, Line next, List<Point> corners)
    {
        var point = new Point(Outward(x, one.NormalX + next.NormalX), Outward(y, one.NormalY + next.NormalY));
        if (corners.Count == 0 || corners[^1] != point)
        {
            corners.Add(point);
        }
    }

    // Away from the panel, so that the cut piece is never smaller than its allowances ask.
    private static Length Outward(double nanometres, double way)
    {
        double micrometres = nanometres / Micrometre;
        double rounded = way > 0 ? Math.Ceiling(micrometres - Noise) : Math.Floor(micrometres + Noise);
        return Length.FromNanometres((long)rounded * (long)Micrometre);
    }

    // A seam line's point and direction, and the cut line beside it.
    internal readonly record struct Line(double SeamX, double SeamY, double DirectionX, double DirectionY, double Allowance)
    {
        // Outward of a counter-clockwise outline is to the right of its direction.
        public double NormalX => DirectionY;

        public double NormalY => -DirectionX;

        public double X => SeamX + (Allowance * NormalX);

        public double Y => SeamY + (Allowance * NormalY);

        /// <summary>The point of the cut line beside the seam line's.</summary>
        public Point Beside => new(Length.FromNanometres((long)Math.Round(X)), Length.FromNanometres((long)Math.Round(Y)));

        public static Line Along(Point point, double direction, double allowance) =>
            new(point.X.Nanometres, point.Y.Nanometres, Math.Cos(direction), Math.Sin(direction), allowance);
    }
}
