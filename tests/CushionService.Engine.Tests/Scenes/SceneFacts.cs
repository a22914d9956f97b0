using System.Collections.Concurrent;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Scenes;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Tests.Patterns;

namespace CushionService.Engine.Tests.Scenes;

/// <summary>What holds for the scene of every construction, outline, closure, side and edging that are offered.</summary>
public sealed class SceneFacts
{
    private static readonly int Cushions = 2 * OfferedCushions.Combinations.Count;

    // In millimetres: arcs are drawn as chords, and two sides of a seam as different ones.
    private const double Slack = 4;

    [Fact]
    public void Every_seam_of_the_cover_is_in_the_scene_once() =>
        Each(scene =>
        {
            Seam[] cover = [.. scene.Pattern.Seams.Where(seam => !seam.One[0].Part.IsInner)];
            Assert.Equal(cover, scene.Seams.Select(seam => seam.Seam));
            Assert.All(scene.Seams, seam => Assert.Equal(seam.Seam.One, seam.Lines.Select(line => line.Edge)));
        });

    [Fact]
    public void Both_sides_of_a_seam_lie_on_each_other() =>
        Each(scene =>
        {
            // Where the strip of a ruffle begins is free.
            foreach (SceneSeam seam in scene.Seams.Where(seam => !IsOfRuffle(seam)))
            {
                double lap = seam.Seam.Lap.Nanometres / 1e6,
                    section = scene.Cushion.Closure is ZipperClosure { Lap: var over } ? over.Nanometres / 1e6 : 0;
                Vector[][] one = [.. seam.Lines.Select(line => line.Points.ToArray())];
                foreach (Vector point in scene.Lines(seam.Seam.Other).SelectMany(line => line.Points))
                {
                    double off = one.Min(line => Distance(line, point));
                    Assert.True(off < Slack + lap + section, $"{seam.Seam.One[0]} and {seam.Seam.Other[0]} are {off} mm apart.");
                }
            }
        });

    [Fact]
    public void Patches_have_the_areas_of_their_panels() =>
        Each(scene =>
        {
            // Gathered corners are drawn up, and what laps over on a roll lies beneath.
            foreach (ScenePart part in scene.Parts.Where(part => !part.Panel.Gathers.Any() && part.Panel.Part.Kind != PartKind.Body))
            {
                double panel = PlanePolygon.Area(PlanePolygon.Of(part.Panel.Edges)),
                    patches = part.Patches.Sum(patch => patch.Area);
                Assert.True(Math.Abs(patches - panel) < 0.002 * panel, $"{part.Panel.Part}: {patches} mm² of {panel}.");
            }
        });

    [Fact]
    public void Edges_are_as_long_in_the_scene_as_on_the_panel() =>
        Each(scene =>
        {
            foreach (SceneLine line in scene.Seams.Where(seam => seam.Seam.Kind != SeamKind.Gathered).SelectMany(seam => seam.Lines))
            {
                Panel panel = scene.Pattern[line.Edge.Part];
                double seen = line.Points.Zip(line.Points.Skip(1), (from, to) => (to - from).Size).Sum(),
                    length = panel[line.Edge.Edge].Length.Nanometres / 1e6;
                bool drawn =
                    panel.Gathers.Any(gather => gather.Edge == line.Edge.Edge) || line.Patch.Surface is DrawnSurface or RuffleSurface;
                Assert.True(drawn || Math.Abs(seen - length) < 0.1 + (0.005 * length), $"{line.Edge}: {seen} mm of {length}.");
            }
        });

    [Fact]
    public void Walls_face_outward_and_faces_up_and_down() =>
        Each(scene =>
        {
            Vector[] all = [.. scene.Parts.SelectMany(part => part.Patches).SelectMany(patch => patch.Outline.Select(patch.Surface.At))];
            double middle = (all.Max(at => at.Z) + all.Min(at => at.Z)) / 2;
            foreach (ScenePart part in scene.Parts.Where(part => part.Panel.Part.Kind is PartKind.Top or PartKind.Bottom))
            {
                foreach (ScenePatch patch in part.Patches.Where(patch => patch.Kind is PatchKind.Face or PatchKind.Pillow))
                {
                    Assert.Equal(part.Panel.Part.Kind == PartKind.Top, patch.Surface.Normal(patch.Outline[0]).Z > 0);
                }
            }

            foreach (ScenePatch patch in scene.Parts.SelectMany(part => part.Patches).Where(patch => patch.Kind == PatchKind.Wall))
            {
                if (scene.Cushion.Construction is not Construction.Bolster || patch.Surface is not DrawnSurface)
                {
                    // The next point inward of a wall is nearer to the middle of a cushion without inside corners.
                    PlanePoint at = PlanePolygon.Middle(patch.Outline);
                    var centre = new Vector(
                        (all.Max(p => p.X) + all.Min(p => p.X)) / 2,
                        (all.Max(p => p.Y) + all.Min(p => p.Y)) / 2,
                        middle
                    );
                    bool convex =
                        scene.Cushion.Outline.Sides.SelectMany(side => side.Path).All(segment => segment.Sweep >= 0)
                        && IsConvex(scene.Cushion);
                    Assert.True(!convex || patch.Surface.Normal(at).Dot(patch.Surface.At(at) - centre) > 0, $"{patch.Kind} faces inward.");
                }
            }
        });

    private static bool IsOfRuffle(SceneSeam seam) => seam.Seam.One.Concat(seam.Seam.Other).Any(edge => edge.Part.Kind == PartKind.Ruffle);

    private static bool IsConvex(CushionSpecification cushion) =>
        cushion.Outline.Kind is not (OutlineKind.Tee or OutlineKind.Ell or OutlineKind.U or OutlineKind.Polygon or OutlineKind.Trapezoid);

    private static void Each(Action<CushionScene> check)
    {
        var faults = new ConcurrentBag<string>();
        Parallel.For(
            0,
            Cushions,
            number =>
            {
                CushionSpecification cushion = OfferedCushions.Cushion(number);
                try
                {
                    Drafting drafting = Drafting.Of(Order(cushion, OfferedCushionFacts.Wide));
                    check(CushionScene.Of(drafting.Order.Cushions[0], drafting.Patterns[0]));
                }
                catch (Exception fault)
                {
                    faults.Add($"{number} {cushion.Construction} {cushion.Outline.Kind} {cushion.Closure} {fault.Message}");
                }
            }
        );
        Assert.True(faults.IsEmpty, string.Join('\n', faults.Order().Take(12)));
    }

    private static double Distance(Vector[] line, Vector at)
    {
        double nearest = double.MaxValue;
        for (var i = 0; i + 1 < line.Length; i++)
        {
            Vector side = line[i + 1] - line[i];
            double length = side.Dot(side),
                share = length == 0 ? 0 : Math.Clamp((at - line[i]).Dot(side) / length, 0, 1);
            nearest = Math.Min(nearest, (at - line[i] - (share * side)).Size);
        }

        return nearest;
    }
}
