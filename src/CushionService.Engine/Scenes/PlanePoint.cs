using CushionService.Engine.Geometry;

namespace CushionService.Engine.Scenes;

/// <summary>A point of a panel in millimetres, for drawing: x across, y along.</summary>
public readonly record struct PlanePoint(double X, double Y)
{
    private const double Nanometres = 1e6;

    /// <summary>A point of a pattern.</summary>
    /// <param name="point">In whole nanometres; its millimetres are as near as a double comes.</param>
    public static PlanePoint Of(Point point) => new(point.X.Nanometres / Nanometres, point.Y.Nanometres / Nanometres);

    /// <summary>Their sum.</summary>
    public static PlanePoint operator +(PlanePoint a, PlanePoint b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>From the second to the first.</summary>
    public static PlanePoint operator -(PlanePoint a, PlanePoint b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>A multiple.</summary>
    public static PlanePoint operator *(double times, PlanePoint a) => new(times * a.X, times * a.Y);

    /// <summary>The scalar product.</summary>
    public double Dot(PlanePoint b) => (X * b.X) + (Y * b.Y);

    /// <summary>Distance from the origin.</summary>
    public double Size => Math.Sqrt(Dot(this));
}
