using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Instructions;

/// <summary>What is done to panels by themselves: hems, stay-stitching, tapers, channels, gathers.</summary>
internal static class PanelWork
{
    /// <summary>The work.</summary>
    /// <param name="plan">The cover.</param>
    /// <returns>Hems first: a hemmed edge is a finished edge to all that comes after.</returns>
    public static IEnumerable<Work> Of(CoverPlan plan) =>
        [
            .. Hems(plan),
            .. StayStitching(plan),
            .. Tapers(plan),
            .. Pleats(plan),
            .. plan.Pattern.Panels.Where(panel => !panel.IsAddition).SelectMany(panel => Channels(plan, panel)),
            .. Gathers(plan),
        ];

    // The edges of one straight line are hemmed in one go, across the panels that a part was joined from.
    private static IEnumerable<Work> Hems(CoverPlan plan) =>
        from panel in plan.Pattern.Panels
        where !panel.IsAddition
        from edge in panel.Edges
        where edge.Finish.Kind == FinishKind.Hem
        // Level and plumb edges are named by their first word, so that the stretches of one line count as one edge.
        let name = edge.Facing == EdgeFacing.Aslant ? edge.Name : new EdgeName(edge.Name.First)
        group panel.Part by (Part: CoverSeams.Base(panel.Part), name, edge.Facing, edge.Finish) into line
        // The ends of a panel that closes at its ends are called by where they lie on it: a body has ends of another kind.
        let closure = line.Key.name == EdgeName.Start || line.Key.name == EdgeName.End
        let at = !closure ? line.Key.name
        : line.Key.name == EdgeName.Start ? EdgeName.Left
        : EdgeName.Right
        let text = StepTexts.Hem(at, line.Key.Part, line.Key.Finish.Turns, line.Key.Finish.Depth, closure)
        select new Work(text, [.. line.Distinct()])
            .After(new State(StateKind.RawEdges), new State(StateKind.Joined, line.Key.Part))
            .Making(new State(StateKind.Hemmed, line.Key.Part));

    // An inside corner is clipped to its point; a row of short stitches keeps the fabric from tearing there. Along a hollow a face is
    // clipped to go round with its boxing, before an edging lies on it (common practice, no source).
    private static IEnumerable<Work> StayStitching(CoverPlan plan)
    {
        bool hollows = plan.HasHollows && plan.Clips && !plan.Units.All(unit => unit.IsFace);
        foreach (CoverUnit face in plan.Units.Where(unit => unit.IsFace))
        {
            if (plan.HasInsideCorners)
            {
                yield return Shaped(plan, face, StepTexts.StayStitch(face.Words, plan.Workroom.Sewing.StayStitch), face.Parts);
            }

            if (hollows)
            {
                yield return Shaped(plan, face, StepTexts.StayStitchHollows(face.Words, plan.Workroom.Sewing.ClipSpacing), face.Parts);
            }
        }
    }

    // A taper cuts into the edges of both faces, so they are cut before they are finished. Faces that must be made one first are finished
    // by then, and what is cut off them is finished again. The lines go on over the joins of a face, so that it is one step.
    private static IEnumerable<Work> Tapers(CoverPlan plan)
    {
        if (plan.Pattern.Panels.FirstOrDefault(panel => panel.Marks.Any(mark => mark.Kind == MarkKind.TaperLine)) is not { } tapered)
        {
            yield break;
        }

        CoverUnit[] faces = [.. plan.Units.Where(unit => unit.IsFace)];
        ImmutableArray<PartName> parts = [.. faces.SelectMany(face => face.Parts)];
        bool whole = parts.Length == faces.Length;
        Message text = StepTexts.Taper(CoverSeams.Base(tapered.Part), again: !whole && CoverSteps.FinishesRawEdges(plan));
        Work work = new Work(text, parts).Making([.. faces.Select(face => face.Is(StateKind.Shaped))]);
        yield return whole ? work.Making(CoverSteps.Trimmed) : work.After([.. faces.SelectMany(CaughtWork.Flat)]);
    }

    // A face that is tufted deep is cut larger than what it is sewn to. What it has to spare is laid in pleats before anything is basted to
    // its edges, in line with the tufts, so that the pleats between the tufts run out in them.
    private static IEnumerable<Work> Pleats(CoverPlan plan)
    {
        ImmutableArray<Panel> eased = TuftEase.Faces(plan.Cushion, plan.Pattern);
        if (eased.IsEmpty)
        {
            yield break;
        }

        (Length across, Length along) = plan.Cushion.Trim.Tufts!.TakeUpOf(plan.Cushion.Width, plan.Cushion.Depth);
        CoverUnit[] faces = [.. eased.Select(face => plan.UnitOf(face.Part))];
        yield return new Work(
            StepTexts.TuftPleats(
                eased.Select(face => face.Part),
                across,
                along,
                faces.Any(face => HasBase(plan, face)),
                eased[0].Width,
                eased[0].Height
            ),
            [.. eased.Select(face => face.Part)]
        )
            .After([.. faces.SelectMany(CaughtWork.Flat), .. faces.Select(face => face.Is(StateKind.Based))])
            .Making([.. faces.Select(face => face.Is(StateKind.Drawn))]);
    }

    // What alters the size or the seam line of a panel comes before anything is sewn to it: channels, which draw fabric in, then gathers,
    // which take a base along.
    private static IEnumerable<Work> Channels(CoverPlan plan, Panel panel)
    {
        CoverUnit unit = plan.UnitOf(panel.Part);
        int lines = panel.Marks.Count(mark => mark.Purpose == MarkPurpose.StitchChannel);
        if (panel.TakeUpAcross + panel.TakeUpAlong > Length.Zero && lines > 0)
        {
            yield return Shaped(
                plan,
                unit,
                StepTexts.Channels(panel.Part, lines, panel.Width, panel.Height, plan.Cushion.Channels!.Direction),
                unit.Parts
            );
        }
    }

    // Edges drawn up to the same length are one step, as the four corners of a face are, on whichever of its panels they are.
    private static IEnumerable<Work> Gathers(CoverPlan plan) =>
        from panel in plan.Pattern.Panels
        where !panel.IsAddition
        from gather in panel.Gathers
        group (panel, gather) by (Part: CoverSeams.Base(panel.Part), gather.To) into drawn
        let unit = plan.UnitOf(drawn.First().panel.Part)
        select new Work(
            StepTexts.Gather(
                drawn.Select(one => one.gather.Edge),
                drawn.Key.Part,
                HasBase(plan, unit),
                GatheringRow(plan),
                drawn.First().panel[drawn.First().gather.Edge].Length,
                drawn.Key.To
            ),
            unit.Parts
        )
            .After([.. CaughtWork.Flat(unit), unit.Is(StateKind.Based)])
            .Making(unit.Is(StateKind.Drawn));

    // The outer row stays within the allowance.
    private static Length GatheringRow(CoverPlan plan) =>
        plan.Allowance > plan.Workroom.Sewing.GatheringRow ? plan.Workroom.Sewing.GatheringRow : plan.Allowance.HalfUp();

    private static bool HasBase(CoverPlan plan, CoverUnit unit) =>
        plan.Cushion.Trim.Base == BaseKind.AntiSlip && unit.Kind == CoverUnitKind.Bottom;

    // Shaping waits for the closure, which makes one panel of the strips beside it.
    private static Work Shaped(CoverPlan plan, CoverUnit unit, Message text, ImmutableArray<PartName> parts) =>
        new Work(text, parts)
            .After([
                new State(StateKind.RawEdges),
                unit.Is(StateKind.Fastened),
                .. parts.Select(part => new State(StateKind.Joined, CoverSeams.Base(part))),
            ])
            .Making(unit.Is(StateKind.Shaped));
}
