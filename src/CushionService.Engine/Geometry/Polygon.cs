using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Geometry;

/// <summary>Measures of a simple polygon.</summary>
public static class Polygon
{
    /// <summary>The area inside counter-clockwise corners, by the shoelace formula (general geometry), down to a square
    /// nanometre.</summary>
    /// <param name="corners">In order; clockwise corners give a negative area.</param>
    public static Area Area(ImmutableArray<Point> corners)
    {
        Int128 twice = 0;
        for (var i = 0; i < corners.Length; i++)
        {
            Point from = corners[i],
                to = corners[(i + 1) % corners.Length];
            twice += ((Int128)from.X.Nanometres * to.Y.Nanometres) - ((Int128)to.X.Nanometres * from.Y.Nanometres);
        }

        return new Area(twice / 2);
    }
}
