using CushionService.Engine.Geometry;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Scenes;

/// <summary>Polygons of a panel, for drawing: arcs as short chords.</summary>
public static class PlanePolygon
{
    /// <summary>Chords that a quarter of a circle is taken as: they are within 0.3 % of its radius.</summary>
    /// <remarks>A chord over an angle a stays r (1 − cos(a / 2)) inside its arc: at 9° that is 0.31 % of the radius
    /// (general geometry).</remarks>
    public const int ChordsOfAQuarter = 10;

    /// <summary>The points of lines and arcs end to end, the first one too.</summary>
    /// <param name="segments">In order, each starting where the one before ends.</param>
    public static List<PlanePoint> Path(IEnumerable<Segment> segments)
    {
        var points = new List<PlanePoint>();
        foreach (Segment segment in segments)
        {
            if (points.Count == 0)
            {
                points.Add(PlanePoint.Of(segment.From));
            }

            int chords = Chords(segment.Sweep);
            for (var i = 1; i < chords; i++)
            {
                points.Add(PlanePoint.Of(segment.At((double)i / chords)));
            }

            points.Add(PlanePoint.Of(segment.To));
        }

        return points;
    }

    /// <summary>The corners of an outline, the first not repeated.</summary>
    public static List<PlanePoint> Of(IEnumerable<Edge> edges)
    {
        List<PlanePoint> points = Path(edges.SelectMany(edge => edge.Path));
        points.RemoveAt(points.Count - 1);
        return points;
    }

    /// <summary>How many chords an arc is taken as; 1 for a line.</summary>
    /// <param name="sweep">The arc's angle in radians, of either sign.</param>
    public static int Chords(double sweep) => Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / (Math.PI / 2) * ChordsOfAQuarter));

    /// <summary>What lies on the near side of a line: at most as far along a direction as a limit (Sutherland and Hodgman, Communications
    /// of the ACM 17, 1974).</summary>
    /// <param name="polygon">Counter-clockwise. A part that is not convex may come out with sides that run along the line
    /// and back.</param>
    /// <param name="direction">One long.</param>
    /// <param name="limit">In millimetres along the direction.</param>
    /// <returns>Empty where fewer than three corners are left.</returns>
    public static List<PlanePoint> Clip(IReadOnlyList<PlanePoint> polygon, PlanePoint direction, double limit)
    {
        var kept = new List<PlanePoint>(polygon.Count + 2);
        for (var i = 0; i < polygon.Count; i++)
        {
            PlanePoint from = polygon[i],
                to = polygon[(i + 1) % polygon.Count];
            double a = from.Dot(direction) - limit,
                b = to.Dot(direction) - limit;
            if (a <= 0)
            {
                kept.Add(from);
            }

            if ((a < 0 && b > 0) || (a > 0 && b < 0))
            {
                kept.Add(from + (a / (a - b) * (to - from)));
            }
        }

        return kept.Count < 3 ? [] : kept;
    }

    /// <summary>What lies between two limits along a direction.</summary>
    /// <param name="polygon">Counter-clockwise.</param>
    /// <param name="direction">One long.</param>
    /// <param name="from">The lower limit, in millimetres along the direction.</param>
    /// <param name="to">The upper limit.</param>
    public static List<PlanePoint> Band(IReadOnlyList<PlanePoint> polygon, PlanePoint direction, double from, double to) =>
        Clip(Clip(polygon, direction, to), -1 * direction, -from);

    /// <summary>What lies within another, convex and counter-clockwise polygon.</summary>
    /// <param name="polygon">Counter-clockwise.</param>
    /// <param name="convex">Convex and counter-clockwise: each of its sides cuts once.</param>
    public static List<PlanePoint> Within(IReadOnlyList<PlanePoint> polygon, IReadOnlyList<PlanePoint> convex)
    {
        List<PlanePoint> kept = [.. polygon];
        for (var i = 0; i < convex.Count && kept.Count > 0; i++)
        {
            PlanePoint side = convex[(i + 1) % convex.Count] - convex[i],
                outward = new(side.Y, -side.X);
            kept = Clip(kept, outward, convex[i].Dot(outward));
        }

        return kept;
    }

    /// <summary>Its area in square millimetres, above zero when counter-clockwise (shoelace formula, general geometry).</summary>
    public static double Area(IReadOnlyList<PlanePoint> polygon)
    {
        double twice = 0;
        for (var i = 0; i < polygon.Count; i++)
        {
            PlanePoint from = polygon[i],
                to = polygon[(i + 1) % polygon.Count];
            twice += (from.X * to.Y) - (to.X * from.Y);
        }

        return twice / 2;
    }

    /// <summary>How far a point is from the nearest side, in millimetres; below zero outside.</summary>
    /// <param name="polygon">In either sense; sides of no length are passed over.</param>
    /// <param name="point">In millimetres, as the polygon.</param>
    public static double Inside(IReadOnlyList<PlanePoint> polygon, PlanePoint point)
    {
        double nearest = double.MaxValue;
        var inside = false;
        for (var i = 0; i < polygon.Count; i++)
        {
            PlanePoint from = polygon[i],
                to = polygon[i + 1 == polygon.Count ? 0 : i + 1],
                side = to - from,
                at = point - from;
            double length = side.Dot(side),
                share = length == 0 ? 0 : Math.Clamp(at.Dot(side) / length, 0, 1);
            at -= share * side;
            nearest = Math.Min(nearest, at.Dot(at));
            // A ray to the right crosses the outline an odd number of times from inside (general geometry). Only one end
            // of a side counts as above, so that a corner is met once.
            inside ^= from.Y > point.Y != to.Y > point.Y && point.X < from.X + (side.X * (point.Y - from.Y) / side.Y);
        }

        return inside ? Math.Sqrt(nearest) : -Math.Sqrt(nearest);
    }

    /// <summary>The middle of its extent.</summary>
    public static PlanePoint Middle(IReadOnlyList<PlanePoint> polygon)
    {
        (PlanePoint low, PlanePoint high) = Extent(polygon);
        return 0.5 * (low + high);
    }

    /// <summary>Its lower left and upper right corners.</summary>
    public static (PlanePoint Low, PlanePoint High) Extent(IReadOnlyList<PlanePoint> polygon)
    {
        (double left, double low, double right, double high) = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (PlanePoint point in polygon)
        {
            (left, right) = (Math.Min(left, point.X), Math.Max(right, point.X));
            (low, high) = (Math.Min(low, point.Y), Math.Max(high, point.Y));
        }

        return (new PlanePoint(left, low), new PlanePoint(right, high));
    }
}
