using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>Two faces that stand out beyond a stitched line round the body. The ordered size is the body's, and the pad's.</summary>
/// <remarks>Single: each face is the body and a flange all round, sewn at the outer edge, turned, and stitched round the body. Double: each
/// face is folded back behind its own flange, so it is the body and two flanges all round, its corners cut off at 45° through the corner of
/// the fold and mitred (follows from folding). The closure opens the body alone.</remarks>
internal sealed class Flanged : IConstruction
{
    public ConstructionOffer Offer { get; } =
        new()
        {
            Kind = Construction.Flanged,
            Description = ConstructionTexts.Flanged,
            Outlines = [OutlineKind.Rectangle],
            Closures =
            [
                new(ClosureKind.Zipper, [Side.Bottom]),
                new(ClosureKind.HookAndLoop, [Side.Bottom]),
                new(ClosureKind.Envelope, [Side.Bottom]),
                new(ClosureKind.HandSewn, [Side.Back]),
                new(ClosureKind.Buttons, [Side.Bottom]),
                new(ClosureKind.Ties, [Side.Bottom]),
            ],
            Thickness = false,
            Fields = [new(ConstructionField.Flange, Required: true), new(ConstructionField.InnerCover)],
        };

    public Pattern Draft(CushionSpecification cushion)
    {
        FlangeSpecification flange = cushion.Flange ?? throw new InvalidPatternException("A flanged cushion has no flange.");
        FlangedFace top = FlangedFace.Whole(PartName.Top, FabricRole.Top, cushion, flange);
        // The opening lies across the underside's body, since a zipper or flaps at the outer edge would show in the
        // flange.
        FlangedFace[] bottom = cushion.Closure switch
        {
            ZipperClosure zipper => FlangedFace.Divided(cushion, flange, zipper.Lap, EdgeFinish.ZipperTurnUnder(zipper.TurnUnder)),
            OverlappingClosure flaps => FlangedFace.Divided(cushion, flange, flaps.Overlap, EdgeFinish.DoubleHem(flaps.Fold)),
            _ => [FlangedFace.Whole(PartName.Bottom, FabricRole.Bottom, cushion, flange)],
        };
        Panel named = top.Panel with { Marks = [.. top.Panel.Marks, .. BodyLine(top.Panel, cushion)] };
        IEnumerable<Seam> opening =
            bottom is [var front, var back] && cushion.Closure is ZipperClosure
                ?
                [
                    .. FlangedFace.Thirds.Select(third => new Seam(
                        third == EdgeWord.Middle ? SeamKind.Zipper : SeamKind.Plain,
                        front.Inner(third),
                        back.Inner(third)
                    )),
                ]
                : [];
        return new Pattern(
            [named, .. bottom.Select(face => Ended(face, cushion.Closure))],
            [
                .. opening,
                .. top.Mitres,
                .. bottom.SelectMany(face => face.Mitres),
                .. flange.Layers == FlangeLayers.Single ? Around(bottom, cushion) : [],
            ]
        ).Closed();
    }

    // Where both parts of a divided bottom reach a side they overlap there, and the top is sewn to both layers.
    private static IEnumerable<Seam> Around(FlangedFace[] bottom, CushionSpecification cushion)
    {
        foreach (EdgeName side in FlangedFace.Sides)
        {
            EdgeRef[] edges = [.. bottom.SelectMany(face => face.On(side))];
            Length lap = edges.Length > 1 ? Overlap(cushion.Closure) : Length.Zero;
            yield return new Seam(
                cushion.Closure is HandSewnClosure && side == EdgeName.Back ? SeamKind.Gap : SeamKind.Plain,
                [new EdgeRef(PartName.Top, side)],
                [.. edges],
                lap
            );
        }
    }

    // How far the front and the back part of the bottom lie over each other.
    private static Length Overlap(ClosureSpecification closure) =>
        closure switch
        {
            OverlappingClosure flaps => flaps.Overlap,
            ZipperClosure zipper => zipper.Lap,
            _ => Length.Zero,
        };

    // A zipper or a tape is as long as the body is wide, and both parts run on beyond it: marks say where it ends.
    private static Panel Ended(FlangedFace face, ClosureSpecification closure)
    {
        if (closure is not (ZipperClosure or HookAndLoopClosure))
        {
            return face.Panel;
        }

        Edge inner = face.Panel[face.Inner(EdgeWord.Middle).Edge];
        Length over =
            closure is not HookAndLoopClosure tape ? Length.Zero
            : inner.Facing == EdgeFacing.Up ? -tape.Overlap
            : tape.Overlap;
        IEnumerable<PanelMark> ends = new[] { inner.From, inner.To }.Select(at =>
            closure is ZipperClosure
                ? new PanelMark(MarkKind.ZipperStop, at, null, MarkPurpose.StopZipper)
                : new PanelMark(MarkKind.StitchLine, at, at.Moved(Length.Zero, over), MarkPurpose.EdgeOfBody)
        );
        Panel ended = face.Panel with { Marks = [.. face.Panel.Marks, .. ends] };
        // The back laps over the front.
        return inner.Facing == EdgeFacing.Up ? LapLine.On(ended, inner, closure) : ended;
    }

    // The line round the body, in the middle of the face.
    private static ImmutableArray<PanelMark> BodyLine(Panel panel, CushionSpecification cushion)
    {
        Length x = Length.FromNanometres((panel.Width - cushion.Width).Nanometres / 2),
            y = Length.FromNanometres((panel.Height - cushion.Depth).Nanometres / 2);
        Point[] corners = [new(x, y), new(x + cushion.Width, y), new(x + cushion.Width, y + cushion.Depth), new(x, y + cushion.Depth)];
        return [.. corners.Select((corner, i) => new PanelMark(MarkKind.StitchLine, corner, corners[(i + 1) % 4], MarkPurpose.StitchBody))];
    }
}
