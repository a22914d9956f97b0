using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Scenes;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Documents.Pictures;

/// <summary>Draws what lies in the seams of a cover and reaches out from them: welts, trims, ruffles and flanges.</summary>
/// <param name="source">What is drawn.</param>
/// <param name="sketch">Takes the shapes.</param>
/// <param name="patches">Draws what is on a panel.</param>
internal sealed class TrimPainter(PictureSource source, Sketch sketch, PatchPainter patches)
{
    private const double Hem = 1.6;
    private static readonly Ink Fine = new(null, 1, Tint.Line, Hem);

    private Camera Camera => sketch.Camera;

    private Tint Fabric => source.Fabric(FabricRole.Edging).Tint;

    private EdgePainter Edge => new(sketch, Fabric);

    /// <summary>Draws what reaches out behind the cushion.</summary>
    /// <param name="edgings">Of the cushion; only ruffles reach out so far that they are seen behind it.</param>
    public void Behind(EdgingLines[] edgings)
    {
        foreach (EdgingLines edging in edgings)
        {
            Stand(edging, front: false);
        }
    }

    /// <summary>Draws what reaches out before its walls.</summary>
    /// <param name="edgings">Of the cushion.</param>
    public void Before(EdgingLines[] edgings)
    {
        foreach (EdgingLines edging in edgings)
        {
            Stand(edging, front: true);
        }
    }

    /// <summary>Draws flanges that lie level with the upper face.</summary>
    /// <param name="faces">The upward faces that are seen; without one the cushion has no upper face to be level
    /// with.</param>
    public void Flanges(VisiblePatch[] faces)
    {
        foreach (ScenePart part in source.Scene.Parts)
        {
            foreach (ScenePatch patch in part.Patches)
            {
                bool isStrip = part.Panel.Part.Kind == PartKind.Flange,
                    shows = patch.Kind == PatchKind.Flange || (isStrip && patch.Kind == PatchKind.Hidden);
                if (shows && faces.Length > 0 && Camera.Facing(patch.Surface.Normal(default)) > 0)
                {
                    var seen = new VisiblePatch(part, patch, patch.Outline, null);
                    sketch.Fill(patch.Outline.Select(patch.Surface.At), new Ink(source.Fabric(part.Panel).Tint, 1, Tint.Line, Hem));
                    patches.Surface(seen);
                }
            }
        }
    }

    /// <summary>What lies along the foot of walls, each a thing to be drawn with them; topstitching there is on the side away from the
    /// viewer.</summary>
    /// <param name="edgings">Of the cushion.</param>
    /// <returns>Each with where it begins and ends on the floor, so that <see cref="WallOrder"/> can put it among the
    /// walls.</returns>
    public IEnumerable<(PlanePoint From, PlanePoint To, Action Paint)> AtFoot(EdgingLines[] edgings)
    {
        foreach (
            EdgingLines edging in edgings.Where(edging => EdgePainter.Draws(edging.Edging) && edging.Edging is not TopstitchSpecification)
        )
        {
            foreach (SceneLine line in edging.Lines.Where(line => !IsUpper(line) || edging.Place == EdgingPlace.Corners))
            {
                foreach ((List<Vector> run, List<Vector> outward) in Runs(line, edging.Place))
                {
                    PlanePoint from = Camera.Plan(run[0]),
                        to = Camera.Plan(run[^1]);
                    yield return (from, to, () => Edge.Along(edging.Edging, run, outward, hangs: true));
                }
            }
        }
    }

    /// <summary>Draws what lies along the seams of the upper face.</summary>
    /// <param name="edgings">Of the cushion.</param>
    /// <param name="faces">The upward faces that are seen.</param>
    public void Welts(EdgingLines[] edgings, VisiblePatch[] faces)
    {
        foreach (EdgingLines edging in edgings.Where(edging => EdgePainter.Draws(edging.Edging) && edging.Place != EdgingPlace.Corners))
        {
            bool pillow = faces.Any(face => face.Patch.Kind == PatchKind.Pillow);
            foreach (SceneLine line in edging.Lines.Where(line => IsUpper(line) || pillow))
            {
                // On a box the whole upper seam is seen, and what hangs from it where it faces the viewer; on a pillow the near half.
                bool near = pillow || edging.Edging is BoughtTrimSpecification { Trim: EdgingKind.Fringe };
                IEnumerable<(List<Vector> Line, List<Vector> Outward)> runs = near
                    ? Runs(line, edging.Place)
                    : [([.. line.Points], [.. line.Outward()])];
                foreach ((List<Vector> run, List<Vector> outward) in runs)
                {
                    Edge.Along(edging.Edging, run, outward, hangs: !pillow);
                }
            }
        }
    }

    /// <summary>Draws what lies in the seams of one panel that is drawn away from its place.</summary>
    /// <param name="edgings">The edgings of the cushion.</param>
    /// <param name="part">The panel.</param>
    /// <param name="shift">How far it is from its place.</param>
    public void Apart(EdgingLines[] edgings, PartName part, Vector shift)
    {
        foreach (EdgingLines edging in edgings)
        {
            foreach ((SceneLine line, Vector[] outward) in edging.Lines.Zip(SceneLine.OutwardOf(edging.Lines)))
            {
                if (line.Edge.Part != part)
                {
                    continue;
                }

                SceneLine moved = line with { Points = [.. line.Points.Select(point => point + shift)] };
                if (edging.Edging is RuffleSpecification ruffle)
                {
                    Ruffle shape = new(moved, outward, ruffle.Depth.Nanometres / 1e6);
                    Ruffled(shape, 0, shape.Inner.Count - 1);
                }
                else if (EdgePainter.Draws(edging.Edging))
                {
                    Edge.Along(edging.Edging, moved.Points, outward, hangs: line.Patch.Kind == PatchKind.Face);
                }
            }
        }
    }

    private bool IsUpper(SceneLine line) =>
        line.Patch.Kind != PatchKind.Pillow && Camera.Facing(line.Patch.Surface.Normal(line.Flat[line.Flat.Length / 2])) > 0;

    // The stretches of a line whose other side faces the viewer; of a corner, those beside a side that does.
    private IEnumerable<(List<Vector> Line, List<Vector> Outward)> Runs(SceneLine line, EdgingPlace place)
    {
        Vector[] outward = [.. line.Outward()];
        List<Vector> run = [],
            ways = [];
        for (int i = 0; i < line.Points.Length; i++)
        {
            bool seen =
                place == EdgingPlace.Corners
                    ? Camera.Facing(line.Patch.Surface.Normal(line.Flat[i])) > -0.2
                        && Camera.Facing(line.Patch.Surface.Normal(line.Flat[i]) + outward[i]) > 0.1
                    : Camera.Facing(outward[i]) > -0.02;
            if (seen)
            {
                run.Add(line.Points[i]);
                ways.Add(outward[i]);
            }

            if ((!seen || i + 1 == line.Points.Length) && run.Count > 0)
            {
                if (run.Count > 1)
                {
                    yield return (run, ways);
                }

                (run, ways) = ([], []);
            }
        }
    }

    // A ruffle hangs a little and waves.
    private void Stand(EdgingLines edging, bool front)
    {
        if (edging.Edging is not RuffleSpecification ruffle)
        {
            return;
        }

        double depth = ruffle.Depth.Nanometres / 1e6;
        foreach ((SceneLine line, Vector[] outward) in edging.Lines.Zip(SceneLine.OutwardOf(edging.Lines)))
        {
            Ruffle shape = new(line, outward, depth);
            bool upper = IsUpper(line) && edging.Place is EdgingPlace.Top or EdgingPlace.Bottom;
            int start = 0;
            for (int i = 1; i <= shape.Inner.Count; i++)
            {
                bool was = upper || Camera.Facing(shape.Outward[i - 1]) > -0.05,
                    goes = i < shape.Inner.Count && (upper || Camera.Facing(shape.Outward[i]) > -0.05) == was;
                if (!goes)
                {
                    if (was == front)
                    {
                        Ruffled(shape, start, Math.Min(i, shape.Inner.Count - 1));
                    }

                    start = i;
                }
            }
        }
    }

    private void Ruffled(Ruffle shape, int from, int to)
    {
        if (to <= from)
        {
            return;
        }

        IEnumerable<int> along = Enumerable.Range(from, to - from + 1);
        sketch.Fill([.. along.Select(i => shape.Inner[i]), .. along.Reverse().Select(i => shape.Outer[i])], new Ink(Fabric));
        sketch.Draw(along.Select(i => shape.Outer[i]), Fine);
        foreach (int i in along.Where(i => i % 2 == 0))
        {
            double share = i % 4 == 0 ? 0.8 : 0.45;
            sketch.Draw([shape.Inner[i], shape.Inner[i] + share * (shape.Outer[i] - shape.Inner[i])], Fine with { Width = 1 });
        }
    }
}
