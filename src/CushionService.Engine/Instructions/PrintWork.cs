using System.Collections.Immutable;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Instructions;

/// <summary>Where a print meets across a seam, said once before the first of them is sewn.</summary>
/// <remarks>Common practice, no source: pieces that are cut to match are held motif to motif on the seam line, for a print that is laid to
/// meet and sewn like a plain fabric slips by more than one sees.</remarks>
internal static class PrintWork
{
    /// <summary>The work; nothing where no seam joins two pieces that are matched.</summary>
    /// <param name="plan">The cover.</param>
    public static IEnumerable<Work> Of(CoverPlan plan)
    {
        Seam[] met = [.. plan.Seams.Select(one => one.Seam).Where(seam => Edges(seam).All(edge => plan.Printed.Contains(edge.Part)))];
        Seam[] runs = [.. met.Where(seam => CoverSeams.IsRun(plan.Pattern, seam))],
            fronts = [.. met.Where(seam => CarriesFront(plan, seam))],
            uprights = plan.Cushion.Match.Boxing == BoxingMatch.AllRound ? [.. met.Where(seam => IsUpright(plan, seam))] : [];
        ImmutableArray<Message> places =
        [
            .. plan
                .Pattern.Panels.Select(panel => CoverSeams.Base(panel.Part))
                .Distinct()
                .SelectMany(part =>
                    Named(
                        [.. plan.Seams.Select(one => one.Seam).Where(seam => CoverSeams.IsRun(plan.Pattern, seam) && IsOf(seam, part))],
                        [.. runs.Where(seam => IsOf(seam, part))],
                        StepTexts.PrintJoins(part),
                        StepTexts.PrintJoin
                    )
                ),
            .. fronts
                .SelectMany(Edges)
                .Where(edge => edge.Part.Kind == PartKind.Top)
                .Select(edge => CoverSeams.Base(edge.Part))
                .Distinct()
                .Select(StepTexts.PrintFront),
            .. Named(
                [.. plan.Seams.Select(one => one.Seam).Where(seam => IsUpright(plan, seam))],
                uprights,
                StepTexts.PrintUprights,
                StepTexts.PrintUpright
            ),
        ];
        if (!places.IsEmpty)
        {
            ImmutableArray<PartName> parts =
            [
                .. runs.Concat(fronts).Concat(uprights).SelectMany(Edges).Select(edge => edge.Part).Distinct(),
            ];
            bool edged = fronts.Length > 0 && SeamWork.IsEdged(plan, [.. plan.Units.Where(unit => unit.Kind == CoverUnitKind.Top)]);
            yield return new Work(StepTexts.MatchPrint(places, plan.ByClips, edged), parts);
        }
    }

    // All seams of a kind by one name where the print meets at each, else those at which it does.
    private static IEnumerable<Message> Named(Seam[] all, Seam[] met, Message name, Func<PartName, PartName, Message> of) =>
        met.Length == 0 ? []
        : met.Length == all.Length ? [name]
        : met.Select(seam => of(seam.One[0].Part, seam.Other[0].Part));

    private static bool IsOf(Seam seam, PartName part) => CoverSeams.Base(seam.One[0].Part) == part;

    // The boxing's front goes on from the top over its front edge, where both are of one fabric.
    private static bool CarriesFront(CoverPlan plan, Seam seam) =>
        seam.Kind is SeamKind.Plain or SeamKind.Gap
        && plan.Cushion.Fabrics[FabricRole.Top] == plan.Cushion.Fabrics[FabricRole.Sides]
        && Edges(seam).Any(edge => edge.Part.Kind == PartKind.Top && plan.Pattern[edge.Part][edge.Edge].Facing == EdgeFacing.Down)
        && Edges(seam).All(edge => edge.Part.Kind == PartKind.Top || plan.Pattern[edge.Part].Role == FabricRole.Sides);

    private static bool IsUpright(CoverPlan plan, Seam seam) =>
        seam.Kind == SeamKind.StripJoin
        && !CoverSeams.IsRun(plan.Pattern, seam)
        && Edges(seam).All(edge => plan.Pattern[edge.Part].Role == FabricRole.Sides);

    private static IEnumerable<EdgeRef> Edges(Seam seam) => seam.One.Concat(seam.Other);
}
