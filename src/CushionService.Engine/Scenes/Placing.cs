namespace CushionService.Engine.Scenes;

/// <summary>Where a part of a whole panel lies.</summary>
/// <param name="Surface">Where.</param>
/// <param name="Kind">What it is there.</param>
/// <param name="Low">The lower left corner of the part, where it is not the whole panel.</param>
/// <param name="High">The upper right corner.</param>
internal sealed record Placing(Surface Surface, PatchKind Kind, PlanePoint? Low = null, PlanePoint? High = null)
{
    /// <summary>The outline from which the filling rounds the panel up; null for the panel's own.</summary>
    public IReadOnlyList<PlanePoint>? Rim { get; init; }

    /// <summary>Whether gathers bring the panel to all of its corners, whatever its own outline.</summary>
    public bool IsFull { get; init; }

    /// <summary>What of a polygon of the panel lies there.</summary>
    public List<PlanePoint> Of(IReadOnlyList<PlanePoint> polygon) =>
        Low is not { } low || High is not { } high ? [.. polygon]
        : IsFull ? [low, new PlanePoint(high.X, low.Y), high, new PlanePoint(low.X, high.Y)]
        : PlanePolygon.Band(PlanePolygon.Band(polygon, new PlanePoint(1, 0), low.X, high.X), new PlanePoint(0, 1), low.Y, high.Y);
}
