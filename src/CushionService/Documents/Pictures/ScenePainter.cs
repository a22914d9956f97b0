using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>Draws a finished cushion, the furthest first: what reaches out behind it, its walls with what is on them, what reaches out
/// before it, and then its upper face, which hides what is behind.</summary>
internal sealed class ScenePainter
{
    private const double Contour = 2.2;

    // Parts side by side are drawn so much wider that no line shows between them.
    private const double Joint = 1;
    private static readonly Ink Outline = new(null, 1, Tint.Line, Contour);
    private readonly PictureSource _source;
    private readonly Sketch _sketch;
    private readonly PatchPainter _patches;
    private readonly FeaturePainter _features;
    private readonly TrimPainter _trims;
    private readonly TiePainter _ties;

    /// <summary>A painter of a cushion.</summary>
    /// <param name="source">What is drawn.</param>
    /// <param name="sketch">Takes the shapes.</param>
    /// <param name="detail">How much of prints and hatches is drawn: 0 for all, and less the higher it is.</param>
    public ScenePainter(PictureSource source, Sketch sketch, int detail)
    {
        (_source, _sketch) = (source, sketch);
        _patches = new PatchPainter(source, sketch, detail);
        _features = new FeaturePainter(source, sketch, detail);
        _trims = new TrimPainter(source, sketch, _patches);
        _ties = new TiePainter(source, sketch);
    }

    private Camera Camera => _sketch.Camera;

    /// <summary>Draws it.</summary>
    /// <remarks>No shape is hidden by computing what covers it: each is drawn over those behind it, so the order is
    /// everything.</remarks>
    public void Paint()
    {
        IReadOnlyList<VisiblePatch> seen = _source.Seen(Camera);
        VisiblePatch[] faces = [.. seen.Where(IsUp)];
        EdgingLines[] edgings = [.. EdgingLines.Of(_source.Scene)];
        _trims.Behind(edgings);
        _ties.Behind();
        Walls([.. seen.Where(one => !IsUp(one))], edgings);
        Gathers();
        _trims.Before(edgings);
        _ties.Before();
        Pillows(faces);
        _trims.Flanges(faces);
        // Flat faces first: a pillow's body rises over them.
        foreach (VisiblePatch face in faces.OrderBy(face => face.Patch.Kind == PatchKind.Pillow ? 1 : 0))
        {
            if (face.Patch.Kind == PatchKind.Pillow)
            {
                _patches.Surface(face);
            }
            else
            {
                _patches.Paint(face);
            }

            Features(face);
        }

        _trims.Welts(edgings, faces);
        _ties.Straps();
    }

    // The folds of corners that are drawn up.
    private void Gathers()
    {
        foreach (ScenePatch patch in _source.Scene.Parts.SelectMany(part => part.Patches))
        {
            if (patch.Surface is GatheredSurface corner && Camera.Facing(corner.Normal(default)) > 0)
            {
                foreach (double share in (double[])[0.14, 0.3, 0.42, 0.58, 0.7, 0.86])
                {
                    double turn = corner.Start + share * corner.Sweep;
                    PlanePoint way = new(Math.Cos(turn), Math.Sin(turn));
                    double inner = share is > 0.25 and < 0.75 ? 0.15 : 0.5;
                    _sketch.Draw(
                        [corner.At(corner.Centre + corner.Radius * way), corner.At(corner.Centre + inner * corner.Radius * way)],
                        Outline with
                        {
                            Width = 1.4,
                        }
                    );
                }
            }
        }
    }

    private void Features(VisiblePatch seen)
    {
        if (_source.Shows(seen.Part.Panel.Part))
        {
            _features.On(seen);
        }
    }

    private bool IsUp(VisiblePatch one) =>
        one.Patch.Kind is PatchKind.Face or PatchKind.Pillow && Camera.IsUp(one.Patch.Surface.Normal(one.Middle));

    // Walls from the furthest to the nearest, each with what is sewn onto it and the edging along its foot.
    private void Walls(VisiblePatch[] walls, EdgingLines[] edgings)
    {
        List<(PlanePoint From, PlanePoint To, Action Paint)> things = [];
        foreach (VisiblePatch wall in walls)
        {
            PlanePoint[] plan = [.. wall.Patch.Surface.Bent(wall.Domain, true).Select(point => Camera.Plan(wall.At(point)))];
            things.Add(
                (
                    plan.MinBy(point => point.X),
                    plan.MaxBy(point => point.X),
                    () =>
                    {
                        _patches.Paint(wall);
                        Features(wall);
                    }
                )
            );
        }

        things.AddRange(_trims.AtFoot(edgings));
        WallOrder.Of(things).ForEach(static paint => paint());
    }

    // Only the body of a cover without sides is seen below its seam.
    private void Pillows(VisiblePatch[] faces)
    {
        if (faces.FirstOrDefault(face => face.Patch.Kind == PatchKind.Pillow) is not { Crown: { } crown } face)
        {
            return;
        }

        var body = new PillowPainter(face.Patch.Rim, face.Patch.Surface, crown, Camera);
        Tint above = _source.Fabric(face.Part.Panel).Tint,
            below = _source.Fabric(Other(face)).Tint;
        foreach (PillowPart part in body.Parts())
        {
            Drawings.Spot[] near = [.. part.Near.Select(_sketch.At)],
                high = [.. part.High.Select(_sketch.At)],
                low = [.. part.Low.Select(_sketch.At)];
            _sketch.Add([.. low, .. near.Reverse()], true, new Ink(below, 1, below, Joint));
            _sketch.Add([.. low, .. near.Reverse()], true, new Ink(Tint.Shade, 0.2));
            _sketch.Add([.. near, .. high.Reverse()], true, new Ink(above, 1, above, Joint));
            _sketch.Add(low, false, Outline);
            _sketch.Add(high, false, Outline);
            _sketch.Add(near, false, Outline);
        }
    }

    // The panel of the other face that is nearest to the front.
    private Engine.Patterns.Panels.Panel Other(VisiblePatch face) =>
        _source
            .Scene.Parts.First(part => part.Panel.Role != face.Part.Panel.Role && part.Patches.Any(patch => patch.Kind == PatchKind.Pillow))
            .Panel;
}
