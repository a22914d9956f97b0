namespace CushionService.Engine.Scenes;

/// <summary>A part of a panel that lies on one surface.</summary>
/// <param name="Outline">Its outline on the panel, counter-clockwise, in the coordinates of the whole panel.</param>
/// <param name="Surface">Where it lies.</param>
/// <param name="Kind">What it is.</param>
public sealed record ScenePatch(IReadOnlyList<PlanePoint> Outline, Surface Surface, PatchKind Kind)
{
    /// <summary>The outline from which the filling rounds it up, likewise: that of the whole face.</summary>
    public IReadOnlyList<PlanePoint> Rim { get; init; } = Outline;

    /// <summary>Its area on the panel, in square millimetres.</summary>
    public double Area => PlanePolygon.Area(Outline);
}
