namespace CushionService.Engine.Scenes;

/// <summary>A panel that lies flat.</summary>
/// <param name="Origin">Where its (0, 0) lies.</param>
/// <param name="Across">Where its x runs.</param>
/// <param name="Along">Where its y runs.</param>
/// <param name="Outward">Away from the filling.</param>
public sealed record PlaneSurface(Vector Origin, Vector Across, Vector Along, Vector Outward) : Surface
{
    /// <inheritdoc />
    public override Vector At(PlanePoint point) => Origin + (point.X * Across) + (point.Y * Along);

    /// <inheritdoc />
    public override Vector Normal(PlanePoint point) => Outward;
}
