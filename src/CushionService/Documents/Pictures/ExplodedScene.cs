using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>The panels of a cushion apart from each other: each moved the way that its outside faces, numbered in the order of the seams
/// that join them.</summary>
internal sealed class ExplodedScene
{
    // How far panels move, as shares of the cushion's extent along, and how level a panel's outside must be to move up or down.
    private const double Sideways = 0.28;
    private const double Upwards = 0.62;

    // How far a base lies under the underside that it is sewn to.
    private const double Beneath = 0.2;
    private readonly Dictionary<PartName, Vector> _shifts = [];
    private readonly Dictionary<PartName, int> _numbers = [];

    /// <summary>The panels of a scene apart.</summary>
    /// <param name="scene">The scene; it is not changed.</param>
    public ExplodedScene(CushionScene scene)
    {
        double extent = Extent(scene);
        UnderBottom = -Beneath * extent * Vector.Up;
        foreach (ScenePart part in scene.Parts)
        {
            Vector outward = Outward(part);
            bool level = Math.Abs(outward.Z) > 0.7;
            _shifts[part.Panel.Part] =
                // A panel that goes round the whole cushion faces every way, so it stays where it is.
                outward.Size < 0.1
                    ? default
                : level ? Upwards * extent * Math.Sign(outward.Z) * Vector.Up
                : Sideways * extent * (outward with { Z = 0 }).Unit();
        }

        foreach (PartName part in scene.Seams.SelectMany(seam => seam.Seam.One.Concat(seam.Seam.Other)).Select(edge => edge.Part))
        {
            // Seams also name panels that have no place in the scene; they get no number.
            if (_shifts.ContainsKey(part))
            {
                _numbers.TryAdd(part, _numbers.Count + 1);
            }
        }

        foreach (ScenePart part in scene.Parts)
        {
            _numbers.TryAdd(part.Panel.Part, _numbers.Count + 1);
        }

        Parts = [.. scene.Parts.OrderBy(NumberOf)];
    }

    /// <summary>The panels in the order in which they are sewn.</summary>
    public IReadOnlyList<ScenePart> Parts { get; }

    /// <summary>How far a base is from the underside that it is sewn to.</summary>
    public Vector UnderBottom { get; }

    /// <summary>A panel's number, from 1.</summary>
    /// <param name="part">A panel of the scene.</param>
    public int NumberOf(ScenePart part) => _numbers[part.Panel.Part];

    /// <summary>How far a panel is from its place.</summary>
    /// <param name="part">A panel of the scene.</param>
    /// <returns>In millimetres; zero for one that goes round the cushion.</returns>
    public Vector ShiftOf(ScenePart part) => _shifts[part.Panel.Part];

    /// <summary>A point in the middle of a panel.</summary>
    /// <param name="part">A panel of the scene.</param>
    /// <remarks>Of a panel whose middle is outside it, such as an L or a ring, the point of a grid that is furthest
    /// inside.</remarks>
    public Vector Middle(ScenePart part)
    {
        ScenePatch largest = part.Patches.Where(patch => patch.Kind != PatchKind.Hidden).MaxBy(patch => patch.Area) ?? part.Patches[0];
        PlanePoint middle = PlanePolygon.Middle(largest.Outline);
        if (PlanePolygon.Inside(largest.Outline, middle) <= 0)
        {
            (PlanePoint low, PlanePoint high) = PlanePolygon.Extent(largest.Outline);
            middle = (
                from i in Enumerable.Range(1, 15)
                from j in Enumerable.Range(1, 15)
                select new PlanePoint(low.X + (high.X - low.X) * i / 16, low.Y + (high.Y - low.Y) * j / 16)
            ).MaxBy(at => PlanePolygon.Inside(largest.Outline, at));
        }

        return largest.Surface.At(middle) + ShiftOf(part);
    }

    /// <summary>The panels from the furthest to the nearest: what moves down, then what is between, then what moves up.</summary>
    /// <param name="camera">Looks at the scene.</param>
    public IEnumerable<ScenePart> FromFurthest(Camera camera) =>
        Parts
            .OrderBy(part => Math.Sign(ShiftOf(part).Z))
            .ThenByDescending(part => part.Patches.Length == 0 ? 0 : camera.Plan(Middle(part)).Y);

    // The mean of the directions that its patches face, each by its area.
    private static Vector Outward(ScenePart part)
    {
        Vector sum = default;
        double area = 0;
        foreach (ScenePatch patch in part.Patches.Where(patch => patch.Kind is not (PatchKind.Hidden or PatchKind.Ruffle)))
        {
            Surface surface = patch.Surface;
            (PlanePoint low, PlanePoint high) = PlanePolygon.Extent(patch.Outline);
            const int Steps = 12;
            for (int i = 0; i < Steps; i++)
            {
                double share = (i + 0.5) / Steps;
                var at = new PlanePoint(low.X + share * (high.X - low.X), low.Y + share * (high.Y - low.Y));
                sum += patch.Area / Steps * surface.Normal(at);
            }

            area += patch.Area;
        }

        return area > 0 ? 1 / area * sum : default;
    }

    private static double Extent(CushionScene scene)
    {
        Vector[] corners = [.. scene.Parts.SelectMany(part => part.Patches).SelectMany(patch => patch.Outline.Select(patch.Surface.At))];
        return Math.Max(corners.Max(at => at.Y) - corners.Min(at => at.Y), 0.5 * (corners.Max(at => at.X) - corners.Min(at => at.X)));
    }
}
