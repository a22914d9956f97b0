using CushionService.Engine.Geometry;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>How far a point is from an outline.</summary>
public static class OutlineDistance
{
    // The straight pieces that an arc is taken as: of a quarter circle of 20 in they are at most 0.03 in from it.
    private const int PiecesOfAnArc = 16;

    /// <summary>From a point to the nearest point of the outline, in nanometres; below zero for a point outside it.</summary>
    /// <remarks>Inside is where a ray to the right crosses the outline an odd number of times (general geometry).</remarks>
    public static double Inside(Outline outline, Point point)
    {
        double nearest = double.MaxValue;
        bool inside = false;
        foreach (Segment segment in outline.Sides.SelectMany(side => side.Path))
        {
            int pieces = segment.IsStraight ? 1 : PiecesOfAnArc;
            Point from = segment.From;
            for (var i = 1; i <= pieces; i++)
            {
                Point to = i == pieces ? segment.To : segment.At((double)i / pieces);
                nearest = Math.Min(nearest, To(from, to, point));
                inside ^= Crosses(from, to, point);
                from = to;
            }
        }

        return inside ? nearest : -nearest;
    }

    private static double To(Point from, Point to, Point point)
    {
        (double dx, double dy) = ((to.X - from.X).Nanometres, (to.Y - from.Y).Nanometres);
        (double x, double y) = ((point.X - from.X).Nanometres, (point.Y - from.Y).Nanometres);
        double share = Math.Clamp(((x * dx) + (y * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
        (x, y) = (x - (share * dx), y - (share * dy));
        return Math.Sqrt((x * x) + (y * y));
    }

    private static bool Crosses(Point from, Point to, Point point) =>
        from.Y > point.Y != to.Y > point.Y
        && point.X.Nanometres
            < (from.X.Nanometres + ((double)(to.X - from.X).Nanometres * (point.Y - from.Y).Nanometres / (to.Y - from.Y).Nanometres));
}
