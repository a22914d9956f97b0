using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Closures;

namespace CushionService.Engine.Instructions;

/// <summary>A closure between edges of its own: across the underside, in a section of the boxing, along a body.</summary>
/// <remarks>Hook outside below, loop inside above, so that the upper strip laps down; the back flap over the front one (common practice, no
/// source).</remarks>
internal static class SectionWork
{
    /// <summary>The work; nothing where the closure is in a seam of the cover.</summary>
    public static IEnumerable<Work> Of(CoverPlan plan) =>
        plan.Cushion.Closure switch
        {
            ZipperClosure zipper => Zipper(plan, zipper),
            OverlappingClosure overlapping => Overlap(plan, overlapping),
            _ => [],
        };

    // Lapped where the order gives a lap, else centred.
    private static IEnumerable<Work> Zipper(CoverPlan plan, ZipperClosure zipper)
    {
        (int Number, Seam Seam)[] seams = ZipperWork.Section(plan);
        if (seams.Length == 0)
        {
            yield break;
        }

        CoverUnit unit = plan.UnitOf(seams[0].Seam.One[0].Part);
        ImmutableArray<PartName> parts = [.. Edged(plan, edge => edge.Finish.Kind == FinishKind.ZipperTurnUnder)];
        Length shut = ZipperWork.Shut(plan, plan.LengthOf(seams)),
            length = plan.LengthOf(seams) - shut;
        int sliders = ZipperWork.Sliders(plan, zipper);
        (Length? height, bool trim) = Height(plan, parts);
        (Message over, Message under) = Sides(parts);
        IEnumerable<PartName> named = parts.Select(CoverSeams.Base).Distinct();
        Message text =
            zipper.Lap > Length.Zero
                ? StepTexts.ZipperLapped(named, zipper.TurnUnder, under, over, zipper.Lap, length, height, trim, sliders, plan.Care)
                : StepTexts.ZipperCentred(named, zipper.TurnUnder, length, height, trim, sliders, plan.Care);
        // Where the closure has seams of its own beyond the zipper, they are longer by so much.
        if (shut > Length.Zero && !SeamWork.HasTails(plan))
        {
            yield return new Work(StepTexts.ZipperTails(named, shut, ZipperWork.Beyond(zipper)), parts)
                .After(Ready(parts))
                .Making(unit.Is(StateKind.Begun));
        }

        yield return Fastened(plan, unit, text, parts)
            .After(ZipperWork.Ready)
            .Making([.. seams.Select(one => new State(StateKind.Sewn, Seam: one.Number))]);
    }

    // Buttons and ties are set on each hem while it lies by itself; hook and loop is sewn on in the same step as the hems are lapped. The
    // tape lies in the middle of the overlap, hence half of what it leaves as a margin.
    private static IEnumerable<Work> Overlap(CoverPlan plan, OverlappingClosure closure)
    {
        ImmutableArray<PartName> parts =
        [
            .. Edged(plan, edge => edge.Finish.Kind == FinishKind.Hem)
                .Where(part => plan.Pattern[part].Edges.Any(Fastenings.IsOverlapping)),
        ];
        CoverUnit unit = plan.UnitOf(parts[0]);
        (Message over, Message under) = Sides(parts);
        var made = new State(StateKind.Made, unit.Name);
        // What is drawn up or tied beyond the fastenings is sewn shut.
        bool beyond = plan.Cushion.Ends is { Kind: not Specifications.Shapes.BolsterEndKind.Flat },
            // The flaps of a flanged cover run on beyond the body, and the line round it is stitched through them.
            flanged = plan.Cushion.Flange is not null;
        (Length? height, bool trim) = Height(plan, parts);
        switch (closure)
        {
            case HookAndLoopClosure hook:
                Length margin = Length.FromNanometres((hook.Overlap - hook.TapeWidth).Nanometres / 2);
                yield return Fastened(
                    plan,
                    unit,
                    StepTexts.HookAndLoop(
                        under,
                        over,
                        hook.TapeWidth,
                        margin,
                        plan.Workroom.Closures.TapeClearance,
                        hook.Overlap,
                        beyond,
                        flanged,
                        height,
                        trim
                    ),
                    parts
                );
                yield break;
            case ButtonClosure buttons:
                yield return new Work(
                    StepTexts.Buttons(
                        Fastenings.Buttons(plan.Pattern),
                        plan.Workroom.Closures.Buttonhole(buttons.Diameter),
                        over,
                        under,
                        // They are half the overlap in, where a narrow hem leaves a single layer.
                        backed: closure.Overlap > 2 * closure.Fold
                    ),
                    parts
                ).After(Ready(parts)).Making(made);
                break;
            case TieClosure:
                yield return new Work(StepTexts.ClosureTies(under, over, closure.Overlap), [new PartName(PartKind.ClosureTie), .. parts])
                    .After(Ready(parts))
                    .Making(made);
                break;
        }

        yield return Fastened(plan, unit, StepTexts.Overlap(over, under, closure.Overlap, beyond, height, trim), parts).After(made);
    }

    // The height of the finished section with its seams, to check it against the boxing, and whether it comes out higher; null where the
    // closure makes no section.
    private static (Length? Height, bool Trim) Height(CoverPlan plan, ImmutableArray<PartName> parts) =>
        parts.Any(part => part.Kind is PartKind.ZipperUpper or PartKind.ClosureUpper)
            ? (plan.Cushion.BoxingHeight + 2 * plan.Allowance, ZipperWork.ComesHigher(plan))
            : (null, false);

    // The upper strip over the lower one, the back flap over the front one, the end of a body over its start: it is a lap wider there. Its
    // edges are named as they lie on the piece.
    private static (Message Over, Message Under) Sides(ImmutableArray<PartName> parts)
    {
        PartName[] named = [.. parts.Select(CoverSeams.Base).Distinct()];
        return named switch
        {
            [var body] => (StepTexts.EdgeOf(EdgeName.Right, body), StepTexts.EdgeOf(EdgeName.Left, body)),
            [{ Half: FaceHalf.Front or FaceHalf.Left } front, var back] => (StepTexts.ThePart(back), StepTexts.ThePart(front)),
            [var upper, var lower, ..] => (StepTexts.ThePart(upper), StepTexts.ThePart(lower)),
            _ => throw new InvalidPatternException("The closure has no edges."),
        };
    }

    // Parts of the cover, not its additions, with an edge of a given finish.
    private static IEnumerable<PartName> Edged(CoverPlan plan, Func<Edge, bool> edge) =>
        plan.Pattern.Panels.Where(panel => !panel.IsAddition && panel.Edges.Any(edge)).Select(panel => panel.Part);

    // The seams beyond the ends of the opening come first, so that the closure has fixed ends.
    private static Work Fastened(CoverPlan plan, CoverUnit unit, Message text, ImmutableArray<PartName> parts) =>
        new Work(text, parts).After([.. Ready(parts), unit.Is(StateKind.Begun)]).Making(unit.Is(StateKind.Fastened));

    // Hems and joins of every part of the closure, and its finished raw edges.
    private static State[] Ready(ImmutableArray<PartName> parts) =>
        [
            new State(StateKind.RawEdges),
            .. parts.Select(part => new State(StateKind.Hemmed, CoverSeams.Base(part))),
            .. parts.Select(part => new State(StateKind.Joined, CoverSeams.Base(part))),
        ];
}
