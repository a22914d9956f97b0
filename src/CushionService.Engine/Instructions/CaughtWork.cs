using System.Collections.Immutable;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Instructions;

/// <summary>What is basted to a face and caught in its seam: the base, then the edging, then ties and straps.</summary>
/// <remarks>A face is whole before anything is basted to it. The base is a layer of the face, cut like it, and so is basted while it lies
/// flat; ties and straps go on last, over the edging, and point inward (common practice, no source).</remarks>
internal static class CaughtWork
{
    /// <summary>The work, without the edging's (see <see cref="EdgingWork"/>).</summary>
    /// <param name="plan">The cover.</param>
    public static IEnumerable<Work> Of(CoverPlan plan) => [.. Base(plan), .. Ties(plan), .. Straps(plan)];

    // The anti-slip base lies on the underside and is caught in its seam, so the underside must be joined and shaped before. What draws its
    // edges up takes the base along.
    private static IEnumerable<Work> Base(CoverPlan plan)
    {
        if (plan.Cushion.Trim.Base == BaseKind.AntiSlip)
        {
            CoverUnit bottom = plan.Units.First(unit => unit.Kind == CoverUnitKind.Bottom);
            yield return new Work(StepTexts.Base(PartName.Bottom), bottom.Parts).After(Flat(bottom)).Making(bottom.Is(StateKind.Based));
        }
    }

    // Ties are made up first, each with one finished end, then basted in pairs where the pattern marks them.
    private static IEnumerable<Work> Ties(CoverPlan plan)
    {
        if (plan.Cushion.Trim.Ties is not { } ties)
        {
            yield break;
        }

        PartName tie = new(PartKind.Tie);
        ImmutableArray<PartName> parts = plan.AllMarked(MarkPurpose.CatchTies);
        var made = new State(StateKind.Made, tie);
        yield return new Work(
            StepTexts.TieEnds(plan.Workroom.Trims.TieEndFold, Strip(plan, tie, 2 * ties.Pairs, ties.Make, ties.Width)),
            tie
        ).Making(made);
        // A gap that is closed by hand holds no more than its folds.
        bool gap = plan.Cushion.Closure is HandSewnClosure && plan.Cushion.Closure.Side == ties.Side;
        yield return Caught(plan, parts, StepTexts.BasteTies(Face(parts), gap), tie).After(made);
    }

    // Both ends of a strap are caught in a seam, so neither is finished.
    private static IEnumerable<Work> Straps(CoverPlan plan)
    {
        if (plan.Cushion.Trim.Straps is not { } straps)
        {
            yield break;
        }

        PartName strap = new(PartKind.Strap);
        PartName[] strips = [.. plan.Pattern.Panels.Select(panel => panel.Part).Where(part => part.Kind == PartKind.Strap)];
        ImmutableArray<PartName> parts = plan.AllMarked(MarkPurpose.CatchStrap);
        var made = new State(StateKind.Made, strap);
        yield return new Work(Strip(plan, strap, straps.Count, straps.Make, straps.Width), [.. strips]).Making(made);
        yield return Caught(plan, parts, StepTexts.BasteStraps(straps.Count, Face(parts), numbered: strips.Length > 1), strips).After(made);
    }

    // Waits for the base and the edging of the same unit: what goes on last lies on top and is caught by the same seam.
    private static Work Caught(CoverPlan plan, ImmutableArray<PartName> parts, Message text, params PartName[] strips)
    {
        CoverUnit unit = plan.UnitOf(parts[0]);
        return new Work(text, [.. strips, .. parts])
            .After([.. Whole(unit), unit.Is(StateKind.Based), unit.Is(StateKind.Edged)])
            .Making(unit.Is(StateKind.Tied));
    }

    // A face that is joined from panels is whole by then.
    private static PartName Face(ImmutableArray<PartName> parts) => CoverSeams.Base(parts[0]);

    /// <summary>What makes a unit whole: its joins, its closure, its shape, its gathers.</summary>
    /// <param name="unit">A unit of the cover.</param>
    /// <returns>States that no work of a cover makes are not waited for: a unit without a closure is whole without
    /// one.</returns>
    public static State[] Whole(CoverUnit unit) => [.. Flat(unit), unit.Is(StateKind.Drawn)];

    /// <summary>What makes a unit whole while it lies flat: its joins, its closure, its shape.</summary>
    /// <param name="unit">A unit of the cover.</param>
    /// <returns>As those of <see cref="Whole"/>.</returns>
    public static State[] Flat(CoverUnit unit) =>
        [
            new State(StateKind.RawEdges),
            unit.Is(StateKind.Fastened),
            unit.Is(StateKind.Shaped),
            .. unit.Parts.Select(part => new State(StateKind.Joined, CoverSeams.Base(part))),
        ];

    // How a narrow strip is made: folded to the middle and stitched, or sewn as a tube and turned. The width is the finished one.
    private static Message Strip(CoverPlan plan, PartName part, int count, StrapMake make, Measures.Length width) =>
        make == StrapMake.Folded
            ? StepTexts.StripFolded(count, part, width)
            : StepTexts.StripTube(count, part, plan.Workroom.Trims.TubeSeam, width, plan.Care);
}
