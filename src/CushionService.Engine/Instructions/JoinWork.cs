using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Instructions;

/// <summary>Panels joined to parts, gores to a top, strips to a loop.</summary>
/// <remarks>Every joined run is a step of its own, so that no strip ends up in another's (common practice, no source).</remarks>
internal static class JoinWork
{
    /// <summary>The work.</summary>
    /// <param name="plan">The cover.</param>
    public static IEnumerable<Work> Of(CoverPlan plan) => [.. Runs(plan), .. Gores(plan), .. Loops(plan)];

    // One step for each part that was too long or too wide for its fabric: its panels in their order, first to last.
    private static IEnumerable<Work> Runs(CoverPlan plan) =>
        plan
            .Seams.Where(one => CoverSeams.IsRun(plan.Pattern, one.Seam))
            .GroupBy(one => CoverSeams.Base(one.Seam.One[0].Part))
            .Select(run =>
                new Work(
                    StepTexts.JoinRun(
                        StepTexts.Chain(Parts(run).OrderBy(part => part.Stretch).Select(StepTexts.ThePart)),
                        run.Count(),
                        plan.Allowance,
                        plan.Care
                    ),
                    Parts(run)
                )
                    .After(new State(StateKind.RawEdges))
                    .Making([new State(StateKind.Joined, run.Key), .. Sewn(run)])
            );

    // Gores make the whole top of a pouf, so joining them is what makes the top whole. An even number makes two halves with one straight
    // seam between them; an odd one has no halves (common practice, no source).
    private static IEnumerable<Work> Gores(CoverPlan plan)
    {
        (int Number, Seam Seam)[] seams =
        [
            .. plan.Seams.Where(one => one.Seam.One[0].Part.Kind == PartKind.Gore && one.Seam.Other[0].Part.Kind == PartKind.Gore),
        ];
        if (seams.Length > 0)
        {
            CoverUnit top = plan.UnitOf(seams[0].Seam.One[0].Part);
            yield return new Work(
                StepTexts.Gores(plan.IsInner, seams.Length % 2 == 0, seams.Length / 2, plan.LengthOf(seams), plan.Allowance),
                top.Parts
            )
                .After(new State(StateKind.RawEdges))
                .Making([top.Is(StateKind.Fastened), .. Sewn(seams)]);
        }
    }

    // What is joined end to end and is not a run closes to a loop, the boxing round the cushion or a wall, unless it ends in points.
    private static IEnumerable<Work> Loops(CoverPlan plan) =>
        plan
            .Seams.Where(one => one.Seam.Kind == SeamKind.StripJoin && !CoverSeams.IsRun(plan.Pattern, one.Seam))
            .GroupBy(one => plan.UnitOf(one.Seam.One[0].Part))
            .Select(loop => Loop(plan, loop.Key, [.. loop]));

    // The half of the loop is stated because halves are what one compares with the face when pinning. Handles, pockets and corner welts
    // come before, while the strip still lies flat.
    private static Work Loop(CoverPlan plan, CoverUnit unit, ImmutableArray<(int Number, Seam Seam)> seams)
    {
        // Both strips of a closure are one link of the chain; so are the panels that a strip was joined from before.
        HashSet<PartName> joined =
        [
            .. plan.Seams.Where(one => CoverSeams.IsRun(plan.Pattern, one.Seam)).Select(one => CoverSeams.Base(one.Seam.One[0].Part)),
        ];
        PartName[] links =
        [
            .. unit
                .Parts.Where(part => part.Kind is not (PartKind.ZipperLower or PartKind.ClosureLower))
                .Select(part => joined.Contains(CoverSeams.Base(part)) ? CoverSeams.Base(part) : part)
                .Distinct(),
        ];
        (Length loop, Length below) = (BoxingLoop.Along(plan, unit, CoverUnitKind.Top), BoxingLoop.Along(plan, unit, CoverUnitKind.Bottom));
        Message chain = StepTexts.Chain(links.Select(link => Link(plan, link)));
        Length? under = below == loop || below == Length.Zero ? null : below;
        // A boxing that runs out in a point has two ends: the faces meet between them.
        Message text =
            seams.Length < links.Length
                ? StepTexts.JoinStrip(chain, seams.Length, plan.Allowance, plan.Care, loop, under)
                : StepTexts.CloseLoop(
                    chain,
                    seams.Length,
                    plan.Allowance,
                    plan.Care,
                    loop,
                    Length.FromNanometres(loop.Nanometres / 2),
                    under
                );
        return new Work(text, unit.Parts)
            .After([
                new State(StateKind.RawEdges),
                unit.Is(StateKind.Fastened),
                unit.Is(StateKind.Mounted),
                new State(StateKind.Edged, PartName.Boxing),
                .. unit.Parts.Select(part => new State(StateKind.Joined, CoverSeams.Base(part))),
            ])
            .Making([unit.Is(StateKind.Looped), .. Sewn(seams)]);
    }

    // A closure is named as a section of the boxing, not by the strips that it was made from.
    private static Message Link(CoverPlan plan, PartName part) =>
        part.Kind is PartKind.ZipperUpper or PartKind.ClosureUpper ? StepTexts.SectionOf(plan.HasZipper) : StepTexts.ThePart(part);

    private static ImmutableArray<PartName> Parts(IEnumerable<(int Number, Seam Seam)> seams) =>
        [.. seams.SelectMany(one => one.Seam.One.Concat(one.Seam.Other)).Select(edge => edge.Part).Distinct()];

    private static IEnumerable<State> Sewn(IEnumerable<(int Number, Seam Seam)> seams) =>
        seams.Select(one => new State(StateKind.Sewn, Seam: one.Number));
}
