using System.Collections.Immutable;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Instructions;

/// <summary>The seams of a waterfall: each side from the front notch outward, the section's ends, then both back edges.</summary>
internal static class WaterfallWork
{
    /// <summary>Whether a unit closes the back.</summary>
    /// <param name="unit">A unit of a waterfall.</param>
    /// <returns>True also for a plain back, of one panel and without a closure.</returns>
    public static bool IsSection(CoverUnit unit) =>
        unit.Kind == CoverUnitKind.Section
        || (unit.Kind == CoverUnitKind.Single && unit.Name.Kind == PartKind.Side && unit.Name.Run.First == Geometry.EdgeWord.Back);

    private static bool IsMain(CoverUnit unit) => unit.Name.Kind == PartKind.Main;

    /// <summary>Whether a seam of two units joins an end of the section to a side.</summary>
    /// <param name="one">A unit that a seam joins.</param>
    /// <param name="other">The unit on its other side.</param>
    /// <returns>False where the main panel is one of them: that is a long edge of the section, or a side.</returns>
    public static bool IsEnd(CoverUnit one, CoverUnit other) => IsSection(one) != IsSection(other) && !IsMain(one) && !IsMain(other);

    /// <summary>The work of seams between the same units.</summary>
    /// <param name="plan">The cover.</param>
    /// <param name="seams">Seams between the same units, at least one.</param>
    /// <param name="opens">Whether these are the last seams of a cover that opens, sewn with its closure open.</param>
    public static Work Of(CoverPlan plan, ImmutableArray<(int Number, Seam Seam)> seams, bool opens)
    {
        CoverUnit[] units =
        [
            .. seams.SelectMany(one => one.Seam.One.Concat(one.Seam.Other)).Select(edge => plan.UnitOf(edge.Part)).Distinct(),
        ];
        // Whatever was joined from panels is whole by then, and named so.
        PartName main = CoverSeams.Base(plan.Units.First(IsMain).Name);
        CoverUnit? section = units.FirstOrDefault(IsSection);
        CoverUnit[] sides = [.. units.Where(unit => !IsSection(unit) && !IsMain(unit))];
        Message text =
            section is null
                ? StepTexts.WaterfallSide(
                    CoverSeams.Base(sides[0].Name),
                    main,
                    plan.LengthOf(seams),
                    plan.Allowance,
                    plan.Cushion.Front == FrontShape.Square,
                    SeamWork.IsEdged(plan, sides[0]),
                    plan.Workroom.Sewing.ClipSpacing,
                    plan.Clips ? plan.Workroom.Sewing.ClipMargin : null
                )
            : sides.Length > 0
                ? StepTexts.WaterfallEnds(
                    section.Words,
                    sides.Select(side => CoverSeams.Base(side.Name)),
                    plan.LengthOf(seams),
                    plan.Allowance,
                    SeamWork.IsEdged(plan, sides)
                )
            : StepTexts.WaterfallBack(opens, plan.HasZipper, section.Words, main, plan.LengthOf(seams), plan.Allowance, plan.Gap(seams));
        return SeamWork.Sewn(plan, seams, text, units);
    }
}
