using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>A part of a patch that faces the viewer.</summary>
/// <param name="Part">The panel.</param>
/// <param name="Patch">The patch.</param>
/// <param name="Domain">The part of its outline, on the whole panel.</param>
/// <param name="Crown">How the filling rounds it up; null for a flat one.</param>
internal sealed record VisiblePatch(ScenePart Part, ScenePatch Patch, IReadOnlyList<PlanePoint> Domain, Crown? Crown)
{
    // Steps in which a line over a crown is bent, and the way over which its slope is taken, in millimetres.
    private const int Steps = 14;
    private const double Slope = 1.5;

    /// <summary>Whether its wrong side is seen.</summary>
    public bool IsAway { get; init; }

    /// <summary>How far it is drawn from its place, where pieces are drawn apart.</summary>
    public Vector Shift { get; init; }

    /// <summary>The point of the scene on which a point of the panel lies, the crown included.</summary>
    /// <param name="point">On the whole panel, in millimetres.</param>
    public Vector At(PlanePoint point)
    {
        Vector flat = Patch.Surface.At(point) + Shift;
        return Crown is null ? flat : flat + Crown.At(point) * Patch.Surface.Normal(point);
    }

    /// <summary>The direction away from the filling there, the crown included.</summary>
    /// <param name="point">On the whole panel, in millimetres.</param>
    /// <remarks>Of a crown by differences over 1.5 mm either way: its height has no formula that could be
    /// derived.</remarks>
    public Vector Normal(PlanePoint point)
    {
        if (Crown is null)
        {
            return Patch.Surface.Normal(point);
        }

        Vector across = At(point with { X = point.X + Slope }) - At(point with { X = point.X - Slope }),
            along = At(point with { Y = point.Y + Slope }) - At(point with { Y = point.Y - Slope }),
            normal = across.Cross(along);
        return (normal.Dot(Patch.Surface.Normal(point)) < 0 ? -normal : normal).Unit();
    }

    /// <summary>A point in the middle of what is seen.</summary>
    public PlanePoint Middle => PlanePolygon.Middle(Domain);

    /// <summary>The points of a line with those at which it bends with the panel.</summary>
    /// <param name="line">Points on the whole panel.</param>
    /// <param name="closed">Whether the last joins the first.</param>
    /// <returns>Over a crown also points between, since a straight line on the panel is a curve there.</returns>
    public List<PlanePoint> Bent(IReadOnlyList<PlanePoint> line, bool closed)
    {
        List<PlanePoint> bent = Patch.Surface.Bent(line, closed);
        if (Crown is null)
        {
            return bent;
        }

        var points = new List<PlanePoint>();
        int count = closed ? bent.Count : bent.Count - 1;
        double size = (PlanePolygon.Extent(Patch.Rim).High - PlanePolygon.Extent(Patch.Rim).Low).Size;
        for (int i = 0; i < count; i++)
        {
            (PlanePoint from, PlanePoint to) = (bent[i], bent[(i + 1) % bent.Count]);
            int steps = Math.Clamp((int)Math.Ceiling(2 * Steps * (to - from).Size / size), 1, Steps);
            for (int step = 0; step < steps; step++)
            {
                points.Add(from + (double)step / steps * (to - from));
            }
        }

        if (!closed)
        {
            points.Add(bent[^1]);
        }

        return points;
    }

    /// <summary>A line or a polygon as it lies in the scene, without the points that face away.</summary>
    /// <param name="line">Points on the whole panel.</param>
    /// <param name="closed">Whether the last joins the first.</param>
    /// <param name="camera">Looks at the scene.</param>
    public IEnumerable<Vector> Seen(IReadOnlyList<PlanePoint> line, bool closed, Camera camera) =>
        Bent(line, closed).Where(point => Crown is null || camera.Facing(Normal(point)) > 0).Select(At);

    /// <summary>The patches of a scene that face the viewer.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="camera">Looks at it.</param>
    public static IEnumerable<VisiblePatch> Of(CushionScene scene, Camera camera) =>
        from part in scene.Parts
        from patch in part.Patches
        where patch.Kind is PatchKind.Face or PatchKind.Wall or PatchKind.Pillow
        from seen in Of(part, patch, Crown.Of(patch, scene.Cushion), camera)
        where !seen.IsAway
        select seen;

    /// <summary>A patch divided where it faces away or turns a corner.</summary>
    /// <param name="part">The panel.</param>
    /// <param name="patch">One of its patches.</param>
    /// <param name="crown">How the filling rounds it up; null for a flat one.</param>
    /// <param name="camera">Looks at the scene.</param>
    /// <returns>Parts that face the viewer and parts that do not, marked as such, along the way in which the patch
    /// bends.</returns>
    public static IEnumerable<VisiblePatch> Of(ScenePart part, ScenePatch patch, Crown? crown, Camera camera)
    {
        const double Least = 0.004;
        Surface surface = patch.Surface;
        PlanePoint middle = PlanePolygon.Middle(patch.Outline);
        bool Faces(double at) =>
            camera.Facing(surface.Normal(surface.BendsAlongY ? middle with { Y = at } : middle with { X = at })) > Least;
        if (surface.Bends.Count == 0)
        {
            yield return new VisiblePatch(part, patch, patch.Outline, crown) { IsAway = camera.Facing(surface.Normal(middle)) <= Least };
            yield break;
        }

        (PlanePoint low, PlanePoint high) = PlanePolygon.Extent(patch.Outline);
        (double from, double to) = (surface.DistanceTo(low), surface.DistanceTo(high));
        SurfaceBend[] bends = [.. surface.Bends.Where(bend => bend.At > from + 1e-6 && bend.At < to - 1e-6), new SurfaceBend(to, true)];
        PlanePoint way = surface.BendsAlongY ? new PlanePoint(0, 1) : new PlanePoint(1, 0);
        double start = from;
        for (int i = 0; i < bends.Length; i++)
        {
            bool faces = Faces(((i == 0 ? from : bends[i - 1].At) + bends[i].At) / 2);
            bool ends = bends[i].IsCorner || Faces((bends[i].At + bends[i + 1].At) / 2) != faces;
            if (ends)
            {
                List<PlanePoint> domain = PlanePolygon.Band(patch.Outline, way, start, bends[i].At);
                if (domain.Count > 2)
                {
                    yield return new VisiblePatch(part, patch, domain, crown) { IsAway = !faces };
                }

                start = bends[i].At;
            }
        }
    }
}
