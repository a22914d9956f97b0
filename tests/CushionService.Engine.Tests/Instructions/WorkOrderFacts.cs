using System.Collections.Immutable;
using CushionService.Engine.Instructions;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Tests.Patterns;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>What is true of every order of work, whatever the cushion (common practice, no source). The rules are stated here by what a
/// step says; the engine's own preconditions are not asked.</summary>
public sealed class WorkOrderFacts
{
    private static readonly string[] OnTheFlat =
    [
        "step.finish-raw-edges",
        "step.join-run",
        "step.gores",
        "step.hem",
        "step.stay-stitch",
        "step.stay-stitch-hollows",
        "step.taper",
        "step.channels",
        "step.gather",
        "step.zipper-centred",
        "step.zipper-lapped",
        "step.hook-and-loop",
        "step.buttons",
        "step.overlap",
        "step.handle-ends",
        "step.handle-webbing",
        "step.pocket",
        "step.vents",
        "step.base",
        "step.baste-ties",
        "step.baste-straps",
        "step.welt-corners",
        "step.welt-sides",
        "step.welt-round",
        "step.piping-baste",
        "step.trim-baste",
        "step.flange-baste",
        "step.ruffle-baste",
    ];

    private static readonly string[] Assembly =
    [
        "step.to-boxing",
        "step.to-body",
        "step.together",
        "step.french-first",
        "step.french-second",
        "step.seam-zipper-ends",
        "step.rest-together",
        "step.waterfall-side",
        "step.waterfall-ends",
        "step.waterfall-back",
    ];

    private static readonly string[] Inside = ["step.turn-out", "step.turn-flanges"];

    public static TheoryData<Construction> Offered => [.. Enum.GetValues<Construction>()];

    [Theory]
    [MemberData(nameof(Offered))]
    public void Every_seam_is_sewn_once_and_nothing_is_shut_that_a_later_step_must_reach_into(Construction construction)
    {
        foreach ((CoverPlan plan, ImmutableArray<Work> works) in Works(construction))
        {
            string[] keys = [.. works.Select(work => work.Text.Key)];
            int turned = Array.FindIndex(keys, key => Inside.Contains(key));

            Assert.Equal(
                plan.Seams.Select(one => one.Number).Order(),
                works.SelectMany(work => work.Makes).Where(state => state.Kind == StateKind.Sewn).Select(state => state.Seam).Order()
            );
            Assert.True(turned > 0, "The cover is never turned.");
            for (var i = 0; i < works.Length; i++)
            {
                if (OnTheFlat.Contains(keys[i]))
                {
                    int sewnIn = Array.FindIndex(
                        keys,
                        at => Assembly.Contains(at) && works[Array.IndexOf(keys, at)].Parts.Intersect(works[i].Parts.Where(IsShell)).Any()
                    );
                    Assert.True(i < turned, $"{works[i].Text} comes after the cover is turned.");
                    Assert.True(sewnIn < 0 || i < sewnIn, $"{works[i].Text} comes after {(sewnIn < 0 ? "" : works[sewnIn].Text)}");
                }

                Assert.True(!Assembly.Contains(keys[i]) || i < turned, $"{works[i].Text} comes after the cover is turned.");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Offered))]
    public void What_is_basted_to_a_face_goes_on_from_the_closure_to_the_ties(Construction construction)
    {
        foreach ((CoverPlan plan, ImmutableArray<Work> works) in Works(construction))
        {
            foreach (CoverUnit face in plan.Units.Where(unit => unit.IsFace))
            {
                InOrder(
                    [.. works.Where(work => work.Parts.Intersect(face.Parts).Any())],
                    ["step.zipper-centred", "step.zipper-lapped", "step.overlap", "step.hook-and-loop", "step.gores"],
                    ["step.base"],
                    [
                        "step.welt-round",
                        "step.welt-sides",
                        "step.piping-baste",
                        "step.trim-baste",
                        "step.ruffle-baste",
                        "step.flange-baste",
                    ],
                    ["step.baste-ties", "step.baste-straps"],
                    Assembly
                );
            }
        }
    }

    [Theory]
    [MemberData(nameof(Offered))]
    public void The_cover_is_open_before_the_seam_that_would_shut_it_and_is_filled_closed_and_checked_last(Construction construction)
    {
        foreach ((CoverPlan plan, ImmutableArray<Work> works) in Works(construction))
        {
            string[] keys = [.. works.Select(work => work.Text.Key)];

            InOrder(
                works,
                Inside,
                ["step.insert-foam", "step.insert-roll", "step.fill-loose", "step.insert-inner"],
                ["step.close-gap", "step.close-closure"],
                ["step.check-box", "step.check-round", "step.check-roll"]
            );
            InOrder(
                works,
                ["step.seam-zipper-ends"],
                ["step.seam-zipper-centred", "step.seam-zipper-lapped", "step.seam-zipper-edged"],
                ["step.rest-together"],
                ["step.corner-notches"],
                Inside
            );
            Assert.StartsWith("step.check", keys[^1], StringComparison.Ordinal);
            if (plan.Cushion.Closure is HandSewnClosure && plan.Seams.Any(one => one.Seam.Kind == SeamKind.Gap))
            {
                Assert.Contains("step.close-gap", keys);
            }

            // What opens is opened in words, unless its flaps only lie over each other or no seam joins its parts.
            int last = Array.FindLastIndex(keys, key => Assembly.Contains(key));
            if (plan.Opens && plan.Cushion.Closure is not EnvelopeClosure && last >= 0)
            {
                string before = string.Join(' ', works.Take(last + 1).Select(work => work.Text.ToString()));
                Assert.True(
                    before.Contains("Open the", StringComparison.Ordinal) || before.Contains("halfway", StringComparison.Ordinal),
                    $"Nothing opens the closure of {plan.Cushion.Construction} before {works[last].Text}"
                );
            }
        }
    }

    // Every step of a group that is there comes after every one of the groups before it.
    private static void InOrder(ImmutableArray<Work> works, params string[][] groups)
    {
        var from = -1;
        foreach (string[] group in groups)
        {
            int[] at = [.. works.Select((work, i) => (work, i)).Where(one => group.Contains(one.work.Text.Key)).Select(one => one.i)];
            Assert.True(at.Length == 0 || at[0] > from, $"{(at.Length == 0 ? "" : works[at[0]].Text)} is out of order.");
            from = at.Length == 0 ? from : at[^1];
        }
    }

    private static bool IsShell(PartName part) =>
        part.Kind
            is not (
                PartKind.Welt
                or PartKind.Ruffle
                or PartKind.Flange
                or PartKind.Handle
                or PartKind.Tie
                or PartKind.Strap
                or PartKind.Pocket
            );

    private static IEnumerable<(CoverPlan Plan, ImmutableArray<Work> Works)> Works(Construction construction)
    {
        for (var number = 0; number < OfferedCushions.Combinations.Count; number++)
        {
            if (OfferedCushions.Combinations[number].Offer.Kind == construction)
            {
                OrderSpecification order = Order(OfferedCushions.Cushion(number), OfferedCushionFacts.Wide);
                Drafting drafting = Drafting.Of(order);
                (Pattern cover, _) = InnerCover.Apart(drafting.Patterns[0]);
                var plan = new CoverPlan(drafting.Order.Cushions[0], cover, drafting.Pieces, order.Workroom, FabricCare.Press);
                yield return (plan, CoverSteps.Ordered(plan));
            }
        }
    }
}
