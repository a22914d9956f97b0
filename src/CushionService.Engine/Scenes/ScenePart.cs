using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Scenes;

/// <summary>A panel of the pattern on the finished cushion.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="Shift">From the panel's coordinates to those of the whole panel that it was divided or joined from.</param>
/// <param name="Patches">Where it lies.</param>
public sealed record ScenePart(Panel Panel, PlanePoint Shift, ImmutableArray<ScenePatch> Patches)
{
    // How far inside an edge its patch is looked for, in millimetres.
    private const double Nudge = 0.2;

    /// <summary>The scene's point on which a point of the panel lies.</summary>
    /// <param name="point">In the panel's own coordinates.</param>
    public Vector At(Point point)
    {
        PlanePoint at = PlanePoint.Of(point) + Shift;
        return PatchAt(at).Surface.At(at);
    }

    /// <summary>The patch that holds a point, or the nearest one.</summary>
    /// <param name="at">In the coordinates of the whole panel.</param>
    public ScenePatch PatchAt(PlanePoint at)
    {
        ScenePatch? nearest = null;
        double most = double.MinValue;
        foreach (ScenePatch patch in Patches)
        {
            double inside = Patches.Length == 1 ? 0 : PlanePolygon.Inside(patch.Outline, at);
            (nearest, most) = inside > most ? (patch, inside) : (nearest, most);
        }

        return nearest!;
    }

    /// <summary>An edge as it lies in the scene.</summary>
    /// <param name="of">An edge of this panel.</param>
    /// <remarks>An edge may lie on the border of two patches, so its patch is asked for a little to the left, which is
    /// inside.</remarks>
    public SceneLine LineOf(EdgeRef of)
    {
        Edge edge = Panel[of.Edge];
        List<PlanePoint> points = [.. PlanePolygon.Path(edge.Path).Select(point => point + Shift)];
        (Point middle, double direction) = edge.At(Measures.Length.FromNanometres(edge.Length.Nanometres / 2));
        ScenePatch patch = PatchAt(PlanePoint.Of(middle) + Shift + (Nudge * new PlanePoint(-Math.Sin(direction), Math.Cos(direction))));
        List<PlanePoint> bent = patch.Surface.Bent(points);
        return new SceneLine(of, [.. bent.Select(patch.Surface.At)], [.. bent], patch);
    }
}
