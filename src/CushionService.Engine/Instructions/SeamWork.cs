using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Instructions;

/// <summary>The seams that make one cover of its units, in the order of the pattern.</summary>
internal static class SeamWork
{
    /// <summary>The work.</summary>
    /// <param name="plan">The cover.</param>
    /// <returns>First what joins edges of one unit, then unit to unit. Only these follow the pattern's order strictly; see <see
    /// cref="WorkOrder"/> for the rest.</returns>
    public static IEnumerable<Work> Of(CoverPlan plan)
    {
        foreach (
            var own in plan
                .Seams.Where(one => IsOwn(plan, one.Seam))
                .GroupBy(one => (Unit: plan.UnitOf(one.Seam.One[0].Part), IsMitre(one.Seam)))
        )
        {
            yield return Own(plan, own.Key.Unit, [.. own]);
        }

        ImmutableArray<(int Number, Seam Seam)>[] groups = [.. Groups(plan)];
        // Corner notches are sewn after the seam that would shut the cover.
        int last = Array.FindLastIndex(groups, group => !CoverSeams.IsNotch(group[0].Seam));
        var before = ImmutableArray<State>.Empty;
        for (var i = 0; i < groups.Length; i++)
        {
            // Each waits for the one before, whatever the general order would allow.
            foreach (Work work in Assembled(plan, groups[i], last: i == last))
            {
                // What is assembled stays in the pattern's order.
                yield return work.After(before.AsSpan());
                before = [.. work.Makes];
            }
        }
    }

    // Edges of one unit that are sewn to each other: mitres, the ends of a closure, the seam of a body.
    private static bool IsOwn(CoverPlan plan, Seam seam) =>
        seam.Kind != SeamKind.StripJoin
        && !CoverSeams.IsInSection(plan.Pattern, seam)
        && !CoverSeams.IsNotch(seam)
        && seam.One[0].Part.Kind != PartKind.Gore
        && plan.UnitOf(seam.One[0].Part) == plan.UnitOf(seam.Other[0].Part);

    /// <summary>Whether the edges of a zipper run on beyond its section, and are sewn to each other there.</summary>
    /// <param name="plan">The cover.</param>
    public static bool HasTails(CoverPlan plan) => plan.HasZipper && plan.Seams.Any(one => IsOwn(plan, one.Seam) && !IsMitre(one.Seam));

    // Named by its edge: the diagonal at a corner that the boxing of a mitred cover makes of one piece.
    private static bool IsMitre(Seam seam) => seam.One[0].Edge.Last == Geometry.EdgeWord.Mitre;

    // Mitres are sewn on a whole unit. The seams beside a closure come before the closure and begin it, since a zipper is set between
    // their ends.
    private static Work Own(CoverPlan plan, CoverUnit unit, ImmutableArray<(int Number, Seam Seam)> seams)
    {
        Length length = plan.LengthOf(seams),
            // A mitre's is no deeper than its flange.
            allowance = plan.Pattern[seams[0].Seam.One[0].Part][seams[0].Seam.One[0].Edge].Finish.Depth;
        bool mitres = IsMitre(seams[0].Seam);
        Message text =
            mitres ? StepTexts.Mitres(unit.Parts, length, allowance)
            : plan.Cushion.Closure is Specifications.Closures.ZipperClosure zipper
                ? StepTexts.ZipperTails(
                    unit.Parts,
                    length + ZipperWork.Shut(plan, plan.LengthOf(ZipperWork.Section(plan))),
                    ZipperWork.Beyond(zipper)
                )
            : StepTexts.OwnEdges(unit.Parts, length, plan.Allowance, plan.Gap(seams));
        Work work = new Work(text, unit.Parts).Making([.. seams.Select(one => new State(StateKind.Sewn, Seam: one.Number))]);
        return mitres
            ? work.After(CaughtWork.Whole(unit))
            : work.After([new State(StateKind.RawEdges), .. unit.Parts.Select(part => new State(StateKind.Hemmed, CoverSeams.Base(part)))])
                .Making(unit.Is(StateKind.Begun));
    }

    // Seams between the same two units that follow each other are sewn in one go.
    private static IEnumerable<ImmutableArray<(int Number, Seam Seam)>> Groups(CoverPlan plan)
    {
        var group = ImmutableArray.CreateBuilder<(int Number, Seam Seam)>();
        foreach ((int Number, Seam Seam) one in plan.Seams.Where(one => Joins(plan, one.Seam)))
        {
            if (group.Count > 0 && Key(plan, group[0].Seam) != Key(plan, one.Seam))
            {
                yield return group.ToImmutable();
                group.Clear();
            }

            group.Add(one);
        }

        if (group.Count > 0)
        {
            yield return group.ToImmutable();
        }
    }

    // A notch lies within both faces, yet is sewn across their seam: it counts as a seam between units.
    private static bool Joins(CoverPlan plan, Seam seam) =>
        CoverSeams.IsNotch(seam) || plan.UnitOf(seam.One[0].Part) != plan.UnitOf(seam.Other[0].Part);

    // Seams with the same key are sewn in one go when they follow each other.
    private static (bool Notch, PartName Section, PartName One, PartName Other) Key(CoverPlan plan, Seam seam)
    {
        CoverUnit one = plan.UnitOf(seam.One[0].Part),
            other = plan.UnitOf(seam.Other[0].Part);
        // The ends of a section are sewn to both sides in one go.
        return Section(one, other) is { } section && WaterfallWork.IsEnd(one, other)
            ? (false, section.Name, default, default)
            : (CoverSeams.IsNotch(seam), default, one.Name, other.Name);
    }

    // Null where neither unit is the section that closes the back.
    private static CoverUnit? Section(CoverUnit one, CoverUnit other) =>
        WaterfallWork.IsSection(one) ? one
        : WaterfallWork.IsSection(other) ? other
        : null;

    // The last seam is sewn with the closure open, or nobody could turn the cover; an envelope is never shut.
    private static IEnumerable<Work> Assembled(CoverPlan plan, ImmutableArray<(int Number, Seam Seam)> seams, bool last)
    {
        CoverUnit one = plan.UnitOf(seams[0].Seam.One[0].Part),
            other = plan.UnitOf(seams[0].Seam.Other[0].Part);
        // A face is sewn to what goes round it.
        (CoverUnit face, CoverUnit around) =
            one.IsFace && other.IsFace ? (Top(one, other), Bottom(one, other))
            : other.IsFace ? (other, one)
            : (one, other);
        bool opens = last && plan.Opens && plan.Cushion.Closure is not Specifications.Closures.EnvelopeClosure;
        if (CoverSeams.IsNotch(seams[0].Seam))
        {
            (CoverUnit top, CoverUnit bottom) = (
                plan.Units.First(unit => unit.Kind == CoverUnitKind.Top),
                plan.Units.First(unit => unit.Kind == CoverUnitKind.Bottom)
            );
            return [Sewn(plan, seams, StepTexts.CornerNotches(top.Words, bottom.Words, plan.LengthOf(seams), plan.Allowance), top, bottom)];
        }

        if (plan.Pattern.Panels.Any(panel => panel.Part.Kind == PartKind.Main))
        {
            return [WaterfallWork.Of(plan, seams, opens)];
        }

        if (seams.Any(seam => seam.Seam.Kind == SeamKind.Zipper))
        {
            return SeamZipperWork.Of(plan, seams, face, around);
        }

        if (plan.Cushion.Trim.Edging is Specifications.Trimmings.FrenchSeamSpecification french && face.IsFace && around.IsFace)
        {
            return TrimWork.French(plan, french, seams, face, around, opens);
        }

        Message text = around.IsFace
            ? StepTexts.Together(
                face.Words,
                around.Words,
                plan.LengthOf(seams),
                plan.Allowance,
                // One side alone, as where a wedge ends in a point, turns nowhere.
                plan.HasCorners
                    && seams.Length > 1,
                plan.HasInsideCorners,
                plan.Gap(seams),
                IsEdged(plan, face, around),
                opens,
                plan.HasZipper
            )
            : ToBoxing(plan, seams, face, around, opens);
        return [Sewn(plan, seams, text, face, around)];
    }

    // A strip is clipped to go round a curve or a corner, and not along a straight side; round a hollow the face was clipped instead, whose
    // raw edge is shorter than its seam line there. The spacing and the depth of the clips are the workroom's. A wall of panels has no back
    // until one of its joins is called so.
    private static Message ToBoxing(
        CoverPlan plan,
        ImmutableArray<(int Number, Seam Seam)> seams,
        CoverUnit face,
        CoverUnit around,
        bool opens
    )
    {
        Specifications.Practices.SewingPractice practice = plan.Workroom.Sewing;
        if (face.Kind == CoverUnitKind.Body || around.Kind == CoverUnitKind.Body)
        {
            (CoverUnit body, CoverUnit end) = face.Kind == CoverUnitKind.Body ? (face, around) : (around, face);
            return StepTexts.ToBody(
                opens,
                plan.HasZipper,
                body.Words,
                plan.HasStraights,
                practice.ClipSpacing,
                plan.Clips ? practice.ClipMargin : null,
                end.Words,
                plan.LengthOf(seams),
                plan.Allowance,
                IsEdged(plan, end),
                plan.HasCorners
            );
        }

        bool boxing = around.Kind == CoverUnitKind.Boxing;
        return StepTexts.ToBoxing(
            opens,
            plan.HasZipper,
            plan.HasCurves && plan.Clips,
            plan.HasHollows && plan.Clips,
            around.Words,
            plan.HasStraights || plan.HasHollows,
            practice.ClipSpacing,
            practice.ClipMargin,
            face.Words,
            plan.LengthOf(seams),
            plan.Allowance,
            boxing && plan.HasCorners,
            boxing && plan.HasInsideCorners,
            plan.Gap(seams),
            IsEdged(plan, face),
            plan.Cushion.Gores > 0 ? StepTexts.BackJoin(CoverSeams.Base(around.Parts[^1]), CoverSeams.Base(around.Parts[0])) : null
        );
    }

    /// <summary>Whether an edging is basted to one of these units.</summary>
    /// <param name="plan">The cover.</param>
    /// <param name="units">Units that are about to be sewn.</param>
    /// <returns>True also when only one part of a unit has the edging.</returns>
    public static bool IsEdged(CoverPlan plan, params CoverUnit[] units) =>
        plan.Cushion.Trim.Edging is { IsCaught: true } edging
        && edging.At.Any(place =>
            units.Any(unit => unit.Parts.Any(part => EdgingLoop.HasEdging(plan.Pattern, new EdgeRef(part, default), place)))
        );

    /// <summary>Seams that join two units, each of which must be whole and bear all that the seam catches.</summary>
    /// <param name="plan">The cover.</param>
    /// <param name="seams">The seams that are sewn in one go.</param>
    /// <param name="text">What to do.</param>
    /// <param name="units">The units that they join.</param>
    public static Work Sewn(CoverPlan plan, ImmutableArray<(int Number, Seam Seam)> seams, Message text, params CoverUnit[] units) =>
        new Work(text, [.. units.SelectMany(unit => unit.Parts)])
            .After([.. units.SelectMany(Ready)])
            .Making([.. seams.Select(one => new State(StateKind.Sewn, Seam: one.Number))]);

    /// <summary>What a unit must be before it is sewn to others.</summary>
    /// <returns>States of which any that no work of the cover makes is not waited for: a face without edging is ready without.</returns>
    /// <param name="unit">A unit of the cover.</param>
    public static State[] Ready(CoverUnit unit) =>
        [
            .. CaughtWork.Whole(unit),
            unit.Is(StateKind.Mounted),
            unit.Is(StateKind.Looped),
            unit.Is(StateKind.Based),
            unit.Is(StateKind.Edged),
            unit.Is(StateKind.Tied),
        ];

    // Of two faces the top is named first, for it is the one that carries the edging and lies uppermost at the machine.
    private static CoverUnit Top(CoverUnit one, CoverUnit other) => one.Kind == CoverUnitKind.Top ? one : other;

    private static CoverUnit Bottom(CoverUnit one, CoverUnit other) => one.Kind == CoverUnitKind.Top ? other : one;
}
