using System.Collections.Immutable;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Closures;

namespace CushionService.Engine.Instructions;

/// <summary>A zipper in the seam between two faces: the seam's ends first, then the zipper, and the other sides once it is open.</summary>
/// <remarks>Common practice, no source. Sewn in any other order the cover would be shut.</remarks>
internal static class SeamZipperWork
{
    /// <summary>The work.</summary>
    /// <param name="plan">The cover.</param>
    /// <param name="seams">All seams between the two faces.</param>
    /// <param name="top">The face that laps over, and has an edging where there is one.</param>
    /// <param name="bottom">The other.</param>
    public static IEnumerable<Work> Of(CoverPlan plan, ImmutableArray<(int Number, Seam Seam)> seams, CoverUnit top, CoverUnit bottom)
    {
        var zipper = (ZipperClosure)plan.Cushion.Closure;
        ImmutableArray<(int Number, Seam Seam)> opening = [.. seams.Where(one => one.Seam.Kind == SeamKind.Zipper)],
            rest = [.. seams.Where(one => one.Seam.Kind != SeamKind.Zipper)];
        Length side = plan.LengthOf(opening),
            room = Closing.ZipperInSeam(side, plan.Workroom.Closures),
            // One with closed ends may be shorter than what is marked for it.
            open = plan.Zipper is { } closed ? Length.Min(closed.Opening, room) : room;
        bool edged = SeamWork.IsEdged(plan, top, bottom),
            isShorter = plan.Zipper is { Shortfall: { Nanometres: > 0 } };
        Message ends = StepTexts.SeamZipperEnds(
            zipper.Side,
            top.Words,
            bottom.Words,
            // A fold that laps over has the deeper allowance, all along its side.
            plan.Pattern[opening[0].Seam.One[0].Part][opening[0].Seam.One[0].Edge].Finish.Depth,
            Length.FromNanometres((side - open).Nanometres / 2),
            plan.IsCurved(zipper.Side),
            !edged,
            open,
            ZipperWork.Sliders(plan, zipper),
            isShorter
        );
        var based = new State(StateKind.Made, bottom.Name, opening[0].Number + 1);
        yield return SeamWork.Sewn(plan, [], ends, top, bottom).Making(based);
        Message set =
            edged ? StepTexts.SeamZipperEdged(plan.Care, top.Words, bottom.Words, isShorter)
            : zipper.Lap > Length.Zero ? StepTexts.SeamZipperLapped(plan.Care, bottom.Words, top.Words, zipper.Lap)
            : StepTexts.SeamZipperCentred(plan.Care);
        yield return SeamWork.Sewn(plan, opening, set, top, bottom).After(based, ZipperWork.Ready);
        if (!rest.IsEmpty)
        {
            Message others = StepTexts.RestTogether(
                top.Words,
                bottom.Words,
                plan.LengthOf(rest),
                plan.Allowance,
                plan.HasCorners,
                plan.HasInsideCorners,
                SeamWork.IsEdged(plan, top, bottom)
            );
            yield return SeamWork.Sewn(plan, rest, others, top, bottom);
        }
    }
}
