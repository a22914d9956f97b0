using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>Draws a finished cushion, the furthest first: what reaches out behind it, its walls with what is on them, what reaches out
/// before it, and then its upper face, which hides what is behind.</summary>
internal sealed class ScenePainter
{
    private const double Contour = 2.2;
    private static readonly Ink Outline = new(null, 1, Tint.Line, Contour);
    private readonly PictureSource _source;
    private readonly Sketch _sketch;
    private readonly PatchPainter _patches;
    private readonly FeaturePainter _features;
    private readonly TrimPainter _trims;

    /// <summary>A painter of a cushion.</summary>
    /// <param name="source">What is drawn.</param>
    /// <param name="sketch">Takes the shapes.</param>
    /// <param name="detail">How much of prints and hatches is drawn: 0 for all, and less the higher it is.</param>
    public ScenePainter(PictureSource source, Sketch sketch, int detail)
    {
        (_source, _sketch) = (source, sketch);
        _patches = new PatchPainter(source, sketch, detail);
        _features = new FeaturePainter(source, sketch);
        _trims = new TrimPainter(source, sketch, _patches);
    }

    private Camera Camera => _sketch.Camera;

    /// <summary>Draws it.</summary>
    public void Paint()
    {
        VisiblePatch[] seen = [.. VisiblePatch.Of(_source.Scene, Camera)];
        VisiblePatch[] faces = [.. seen.Where(IsUp)];
        EdgingLines[] edgings = [.. EdgingLines.Of(_source.Scene)];
        _trims.Behind(edgings);
        Walls([.. seen.Where(one => !IsUp(one))], edgings);
        _trims.Before(edgings);
        Pillows(faces);
        _trims.Flanges(faces);
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

            _features.On(face);
        }

        _trims.Welts(edgings, faces);
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
                        _features.On(wall);
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
        Tint above = _source.Fabric(face.Part.Panel.Role).Tint,
            below = _source.Fabric(Other(face)).Tint;
        foreach (PillowPart part in body.Parts())
        {
            Drawings.Spot[] near = [.. part.Near.Select(_sketch.At)],
                high = [.. part.High.Select(_sketch.At)],
                low = [.. part.Low.Select(_sketch.At)];
            _sketch.Add([.. low, .. near.Reverse()], true, new Ink(below));
            _sketch.Add([.. low, .. near.Reverse()], true, new Ink(Tint.Shade, 0.2));
            _sketch.Add([.. near, .. high.Reverse()], true, new Ink(above));
            _sketch.Add(low, false, Outline);
            _sketch.Add(high, false, Outline);
            _sketch.Add(near, false, Outline);
        }
    }

    private static Engine.Specifications.Fabrics.FabricRole Other(VisiblePatch face) =>
        face.Part.Panel.Role == Engine.Specifications.Fabrics.FabricRole.Top
            ? Engine.Specifications.Fabrics.FabricRole.Bottom
            : Engine.Specifications.Fabrics.FabricRole.Top;
}
