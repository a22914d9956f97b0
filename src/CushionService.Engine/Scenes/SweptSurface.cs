namespace CushionService.Engine.Scenes;

/// <summary>A panel that runs along a path, straight across it: a boxing round an outline, a sheet over a front.</summary>
/// <param name="Path">The path, in a plane of its own.</param>
/// <param name="Plane">Where that plane lies: its origin and the directions of its x and y.</param>
/// <param name="Across">Where the panel runs across the path.</param>
public sealed record SweptSurface(SurfacePath Path, PlaneSurface Plane, Vector Across) : Surface
{
    /// <summary>Whether the panel's y runs along the path, and its x across.</summary>
    public bool IsUpright { get; init; }

    /// <summary>Whether the panel is seen from its wrong side where x runs to the right and y upwards.</summary>
    public bool IsMirrored { get; init; }

    /// <inheritdoc />
    public override IReadOnlyList<SurfaceBend> Bends => Path.Bends;

    /// <inheritdoc />
    public override bool BendsAlongY => IsUpright;

    /// <inheritdoc />
    public override Vector At(PlanePoint point) => Plane.At(Path.At(DistanceTo(point)).Point) + ((IsUpright ? point.X : point.Y) * Across);

    /// <inheritdoc />
    /// <remarks>Across and along the path, in the order that makes it point away from the filling.</remarks>
    public override Vector Normal(PlanePoint point)
    {
        PlanePoint direction = Path.At(DistanceTo(point)).Direction;
        Vector along = (direction.X * Plane.Across) + (direction.Y * Plane.Along),
            normal = IsUpright ? Across.Cross(along) : along.Cross(Across);
        return IsMirrored ? -normal : normal;
    }
}
