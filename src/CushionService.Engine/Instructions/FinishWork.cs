using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Instructions;

/// <summary>What is done once the seams are sewn: turning, closing, tufting, checking.</summary>
internal static class FinishWork
{
    private static readonly State Turned = new(StateKind.Turned),
        Lined = new(StateKind.Lined),
        Filled = new(StateKind.Filled),
        Closed = new(StateKind.Closed);

    /// <summary>The work.</summary>
    /// <param name="plan">The cover.</param>
    /// <returns>Turning first and checking last; what is between depends on the closure.</returns>
    public static IEnumerable<Work> Of(CoverPlan plan) =>
        [TurnOut(plan), .. BodyLine(plan), .. Ends(plan), .. Closing(plan), .. Tufts(plan), Check(plan)];

    // Every seam must be sewn and every closure in: whatever is still open at that point is the opening that the cover is turned through.
    private static Work TurnOut(CoverPlan plan)
    {
        OpeningWay way = plan.Cushion.Closure switch
        {
            HandSewnClosure => OpeningWay.Gap,
            // The zipper of a body without ends is shut while it is set in.
            ZipperClosure when plan.Cushion.Ends is { Kind: not BolsterEndKind.Flat } => OpeningWay.End,
            ZipperClosure => OpeningWay.Zipper,
            EnvelopeClosure => OpeningWay.Envelope,
            _ => OpeningWay.Closure,
        };
        Message text = plan.Cushion.Flange is { Layers: FlangeLayers.Double } flange
            ? StepTexts.TurnFlanges(flange.Turning, plan.Care)
            : StepTexts.TurnOut(
                IsInsideOut(plan),
                HasOpenCurves(plan) && plan.HasCurves,
                HasOpenCurves(plan) && plan.HasHollows,
                plan.Workroom.Sewing.ClipSpacing,
                plan.Workroom.Sewing.ClipMargin,
                HasOpenCorners(plan),
                plan.IsInner,
                way,
                plan.Care
            );
        return new Work(text)
            .After([
                .. plan.Seams.Select(one => new State(StateKind.Sewn, Seam: one.Number)),
                .. plan.Units.Select(unit => unit.Is(StateKind.Fastened)),
                .. plan.Units.SelectMany(unit => unit.Parts).Select(part => new State(StateKind.Hemmed, CoverSeams.Base(part))),
            ])
            .Making(Turned);
    }

    // The corners of a French seam are trimmed between its rows: later a cut would open it.
    private static bool HasOpenCorners(CoverPlan plan) => plan.HasCorners && plan.Cushion.Trim.Edging is not FrenchSeamSpecification;

    // Faces that are sewn to each other round a curve have nothing that was clipped to go round it. Turned, the allowances of an outward
    // curve are too long for their place and are notched; those of a hollow are too short and are clipped (common practice, no source).
    private static bool HasOpenCurves(CoverPlan plan) =>
        plan.Clips && plan.Units.All(unit => unit.IsFace) && plan.Cushion.Trim.Edging is not FrenchSeamSpecification;

    // A body whose closure alone makes it a tube is sewn right side up: nothing of it is turned.
    private static bool IsInsideOut(CoverPlan plan) => plan.Seams.Any(one => !CoverSeams.IsInSection(plan.Pattern, one.Seam));

    // The line between body and flange holds the fill, so it is stitched first with a gap, filled, then finished. A cover that opens needs
    // no gap, for the fill goes in through its closure.
    private static IEnumerable<Work> BodyLine(CoverPlan plan)
    {
        if (
            plan.Cushion.Flange is not { } flange
            || plan.Pattern.Panels.FirstOrDefault(panel => panel.Marks.Any(mark => mark.Purpose == MarkPurpose.StitchBody)) is not { } face
        )
        {
            yield break;
        }

        bool gap = plan.Cushion.Closure is HandSewnClosure;
        ImmutableArray<PartName> faces = [.. plan.Units.SelectMany(unit => unit.Parts)];
        yield return new Work(
            StepTexts.BodyLine(flange.Layers == FlangeLayers.Double, CoverSeams.Base(face.Part), flange.Width, gap),
            faces
        )
            .After(Turned)
            .Making(Lined);
        if (gap)
        {
            yield return new Work(StepTexts.BodyLineRest, faces).After(Lined, Filled).Making(new State(StateKind.Made));
        }
    }

    // Drawn-up ends close the roll before it is filled; tied ends are tied over the filling, which gives them something to hold on to. A
    // loose filling would run out into the tails, so they are tied before it (common practice, no source).
    private static IEnumerable<Work> Ends(CoverPlan plan)
    {
        // A long body is joined from panels, and is whole by then.
        PartName body = CoverSeams.Base(plan.Pattern.Panels[0].Part);
        ImmutableArray<PartName> parts = [.. plan.Pattern.Panels.Select(panel => panel.Part).Where(part => CoverSeams.Base(part) == body)];
        if (plan.Cushion.Ends is { Kind: BolsterEndKind.Gathered } drawn)
        {
            yield return new Work(StepTexts.DrawEnds(body, drawn.Turning), parts).After(Turned).Making(Lined);
        }

        if (plan.Cushion.Ends is { Kind: BolsterEndKind.Tied })
        {
            bool isLoose = plan.Cushion is { Fill.Kind: FillKind.Loose, Fabrics.InnerCover: null };
            yield return isLoose
                ? new Work(StepTexts.TieBody(body, filled: false), parts).After(Turned).Making(Lined)
                : new Work(StepTexts.TieBody(body, filled: true), parts).After(Turned, Filled, Closed).Making(new State(StateKind.Edged));
        }
    }

    // An envelope closes by itself, its flaps lie over each other. A cover without a closure is closed only where a gap was left.
    private static IEnumerable<Work> Closing(CoverPlan plan)
    {
        bool gap = plan.Seams.Any(one => one.Seam.Kind == SeamKind.Gap);
        if (plan.Opens ? plan.Cushion.Closure is not EnvelopeClosure : gap)
        {
            yield return new Work(plan.Opens ? StepTexts.CloseClosure(plan.HasZipper) : StepTexts.CloseGap)
                .After(Turned, Lined, Filled, new State(StateKind.Made))
                .Making(Closed);
        }
    }

    // Tufts go through cover and filling, so they come when all else is closed. A button's cover is twice as wide as the button, and each
    // tuft has a button on both faces (common practice, no source).
    private static IEnumerable<Work> Tufts(CoverPlan plan)
    {
        if (plan.Cushion.Trim.Tufts is not { } tufts)
        {
            yield break;
        }

        var covered = new PartName(PartKind.ButtonCover);
        var made = new State(StateKind.Made, covered);
        if (tufts.Covered)
        {
            yield return new Work(StepTexts.ButtonCovers(2 * tufts.ButtonDiameter, 2 * tufts.Count), covered).After(Closed).Making(made);
        }

        ImmutableArray<PartName> faces = [.. plan.Units.Where(unit => unit.IsFace).SelectMany(unit => unit.Parts)];
        Length? depth = tufts.PullDepth > Length.Zero ? tufts.PullDepth : null;
        yield return new Work(StepTexts.Tufts(depth, tufts.Count), faces)
            .After(Turned, Filled, Closed, made)
            .Making(new State(StateKind.Edged));
    }

    // Finished sizes are checked against the order, within the workroom's tolerance; null thickness for a cover without a boxing.
    private static Work Check(CoverPlan plan)
    {
        CushionSpecification cushion = plan.Cushion;
        Length tolerance = plan.Workroom.Sewing.Tolerance;
        Length? thickness = cushion.Thickness > Length.Zero ? cushion.Thickness : null;
        Message text =
            cushion.Construction == Construction.Bolster ? StepTexts.CheckRoll(cushion.Width, cushion.Length, tolerance)
            : cushion.Construction == Construction.Wedge
                ? StepTexts.CheckWedge(
                    cushion.Width,
                    cushion.Depth,
                    cushion.Thickness,
                    cushion.FrontThickness > Length.Zero ? cushion.FrontThickness : null,
                    tolerance
                )
            : cushion.Outline is CircleOutline ? StepTexts.CheckRound(cushion.Width, thickness, tolerance)
            : StepTexts.CheckBox(cushion.Width, cushion.Depth, thickness, tolerance);
        return new Work(text).After(Turned, Lined, Filled, Closed, new State(StateKind.Edged));
    }
}
