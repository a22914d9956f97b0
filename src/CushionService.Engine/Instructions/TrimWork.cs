using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Instructions;

/// <summary>Edgings without fabric of their own: bought trims, topstitching, French seams.</summary>
/// <remarks>Common practice, no source: what is sewn on over a seam, or beside it through the turned cover, comes before the filling, which
/// would be in the way; over a gap that is closed by hand it comes last. A seam is topstitched as soon as it is sewn, while the cover lies
/// flat; the last one through the opening.</remarks>
internal static class TrimWork
{
    /// <summary>A bought trim, basted into its seam, or sewn on over it.</summary>
    public static IEnumerable<Work> Bought(CoverPlan plan, BoughtTrimSpecification trim)
    {
        Length overlap = plan.Workroom.Trims.WeltOverlap;
        foreach (EdgingLoop loop in trim.At.Select(place => EdgingLoop.Of(plan.Pattern, place)))
        {
            Message where = plan.Bearing(loop.Place);
            yield return trim.IsCaught
                ? EdgingWork.Basted(
                    plan,
                    loop,
                    StepTexts.TrimBaste(trim.Kind, where, loop.Length, loop.IsClosed, plan.HasCorners, overlap),
                    []
                )
                : SewnOn(plan, loop, trim, where);
        }
    }

    /// <summary>Rows of topstitching, through one layer along an opening.</summary>
    public static IEnumerable<Work> Topstitched(CoverPlan plan, TopstitchSpecification topstitch)
    {
        foreach (EdgingLoop loop in topstitch.At.Select(place => EdgingLoop.Of(plan.Pattern, place)))
        {
            (int Number, Seam Seam)[] seams = [.. SeamsOf(plan, loop)];
            bool opens = seams.Any(one => one.Seam.Kind is SeamKind.Zipper or SeamKind.Gap),
                // Through both halves of a cover with corners of its own height the rows would sew its sides flat.
                both =
                    plan.Cushion.Thickness == Length.Zero
                    && seams.All(one => plan.UnitOf(one.Seam.One[0].Part).IsFace && plan.UnitOf(one.Seam.Other[0].Part).IsFace);
            Message text = StepTexts.Topstitch(plan.Bearing(loop.Place), topstitch.Distance, topstitch.Rows, loop.Length, both, opens);
            yield return both || seams.Contains(plan.Seams.Last(one => !CoverSeams.IsNotch(one.Seam)))
                ? Turned(plan, loop, text)
                : Along(plan, loop, text).After([.. seams.Select(one => new State(StateKind.Sewn, Seam: one.Number))]);
        }
    }

    /// <summary>A French seam between two faces: the narrow row on the outside, then the one that encloses it.</summary>
    /// <param name="plan">The cover.</param>
    /// <param name="french">The seam.</param>
    /// <param name="seams">The seams between the faces.</param>
    /// <param name="top">One face.</param>
    /// <param name="bottom">The other.</param>
    /// <param name="opens">Whether the cover is turned through a closure that must be opened.</param>
    public static IEnumerable<Work> French(
        CoverPlan plan,
        FrenchSeamSpecification french,
        ImmutableArray<(int Number, Seam Seam)> seams,
        CoverUnit top,
        CoverUnit bottom,
        bool opens
    )
    {
        Length length = plan.LengthOf(seams);
        var first = new State(StateKind.Made, bottom.Name, seams[0].Number + 1);
        yield return SeamWork
            .Sewn(
                plan,
                [],
                StepTexts.FrenchFirst(
                    top.Words,
                    bottom.Words,
                    plan.Allowance - french.Second,
                    length,
                    french.Second.HalfUp(),
                    plan.HasCorners
                ),
                top,
                bottom
            )
            .Making(first);
        yield return SeamWork
            .Sewn(plan, seams, StepTexts.FrenchSecond(opens, plan.HasZipper, french.Second, plan.HasCorners, plan.Care), top, bottom)
            .After(first);
    }

    // Over a gap a trim can lie only once the gap is closed; beside a zipper it is caught on one side, or it would sew the cover shut.
    private static Work SewnOn(CoverPlan plan, EdgingLoop loop, BoughtTrimSpecification trim, Message where)
    {
        SeamKind[] kinds = [.. SeamsOf(plan, loop).Select(one => one.Seam.Kind)];
        Message text = StepTexts.TrimOn(trim.Kind, where, loop.Length, loop.IsClosed, kinds.Contains(SeamKind.Zipper));
        return kinds.Contains(SeamKind.Gap)
            ? Along(plan, loop, text, new State(StateKind.Edged)).After(new State(StateKind.Turned), new State(StateKind.Closed))
            : Turned(plan, loop, text);
    }

    // The seams along an edging, each between what has it and what has not.
    private static IEnumerable<(int Number, Seam Seam)> SeamsOf(CoverPlan plan, EdgingLoop loop) =>
        plan.Seams.Where(one =>
            EdgingLoop.HasEdging(plan.Pattern, one.Seam.One[0], loop.Place)
            != EdgingLoop.HasEdging(plan.Pattern, one.Seam.Other[0], loop.Place)
        );

    // On the turned cover, through its opening.
    private static Work Turned(CoverPlan plan, EdgingLoop loop, Message text) => Along(plan, loop, text).After(new State(StateKind.Turned));

    private static Work Along(CoverPlan plan, EdgingLoop loop, Message text) => Along(plan, loop, text, new State(StateKind.Lined));

    private static Work Along(CoverPlan plan, EdgingLoop loop, Message text, State made) =>
        new Work(
            text,
            [
                .. plan
                    .Units.SelectMany(unit => unit.Parts)
                    .Where(part => EdgingLoop.HasEdging(plan.Pattern, new EdgeRef(part, default), loop.Place)),
            ]
        ).Making(made);
}
