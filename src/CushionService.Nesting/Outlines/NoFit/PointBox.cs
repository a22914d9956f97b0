namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>The bounding box of some points, edges included, in the units of the points.</summary>
/// <param name="Left">The least x.</param>
/// <param name="Lower">The least y.</param>
/// <param name="Right">The greatest x.</param>
/// <param name="Upper">The greatest y.</param>
internal readonly record struct PointBox(long Left, long Lower, long Right, long Upper)
{
    /// <summary>The box of two points.</summary>
    public static PointBox Of(GridPoint a, GridPoint b) =>
        new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));

    /// <summary>The box of a polygon of at least one corner.</summary>
    public static PointBox Of(ReadOnlySpan<GridPoint> polygon)
    {
        var box = Of(polygon[0], polygon[0]);
        foreach (var (x, y) in polygon)
        {
            box = new(Math.Min(box.Left, x), Math.Min(box.Lower, y), Math.Max(box.Right, x), Math.Max(box.Upper, y));
        }

        return box;
    }

    /// <summary>Whether the two share area.</summary>
    public bool Meets(PointBox other) => Left < other.Right && other.Left < Right && Lower < other.Upper && other.Lower < Upper;

    /// <summary>Whether the two share a point at least, such as one on their edges.</summary>
    public bool Touches(PointBox other) => Left <= other.Right && other.Left <= Right && Lower <= other.Upper && other.Lower <= Upper;
}
