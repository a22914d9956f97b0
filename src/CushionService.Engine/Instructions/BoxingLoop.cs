using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Instructions;

/// <summary>How long the boxing of a cover is on the seam line.</summary>
public static class BoxingLoop
{
    /// <summary>The length round the top.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="pattern">Its pattern.</param>
    /// <returns>Null for a cover whose sides close to no loop round a top.</returns>
    public static Length? Of(CushionSpecification cushion, Pattern pattern)
    {
        ArgumentNullException.ThrowIfNull(cushion);
        var plan = new CoverPlan(cushion, InnerCover.Apart(pattern).Cover, [], cushion.Practice, FabricCare.Press);
        CoverUnit? looped = plan
            .Seams.Where(one => one.Seam.Kind == SeamKind.StripJoin && !CoverSeams.IsRun(plan.Pattern, one.Seam))
            .Select(one => plan.UnitOf(one.Seam.One[0].Part))
            .FirstOrDefault(unit => !unit.IsFace);
        return looped is { } boxing && Along(plan, boxing, CoverUnitKind.Top) is { Nanometres: > 0 } length ? length : null;
    }

    /// <summary>The length of a unit along its seams with a face.</summary>
    /// <param name="plan">The cover.</param>
    /// <param name="unit">What runs round the face.</param>
    /// <param name="kind">Which face.</param>
    /// <returns>Zero for a cover without such a face.</returns>
    internal static Length Along(CoverPlan plan, CoverUnit unit, CoverUnitKind kind) =>
        plan.Units.FirstOrDefault(other => other.Kind == kind) is not { } face
            ? Length.Zero
            : plan.LengthOf(
                plan.Seams.Where(one =>
                    one.Seam.Kind != SeamKind.StripJoin
                    && one.Seam.One.Concat(one.Seam.Other).Any(edge => unit.Has(edge.Part))
                    && one.Seam.One.Concat(one.Seam.Other).Any(edge => face.Has(edge.Part))
                )
            );
}
