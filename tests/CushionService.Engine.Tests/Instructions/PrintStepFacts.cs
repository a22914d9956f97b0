using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>A print that is laid to meet across seams is held motif to motif before it is sewn (common practice, no source).</summary>
public sealed class PrintStepFacts
{
    private static readonly CushionSpecification Bench = Boxed(70, 22, 4, HandSewn) with
    {
        Trim = new TrimSpecification { FaceJoins = FaceJoins.Allow },
    };

    private static readonly FabricSpecification Printed = Fabric with
    {
        Repeat = new RepeatSpecification(In(12), In(9), DropKind.Straight),
    };

    [Fact]
    public void The_joins_of_a_printed_bench_are_matched_before_they_are_sewn()
    {
        string[] steps = Steps(Bench, Printed);
        int match = Array.FindIndex(steps, step => step.Contains("The print meets at", StringComparison.Ordinal));

        Assert.Contains(
            "the joins of top, the joins of bottom, the joins of front and the front edge of top. When each of these seams comes to",
            steps[match],
            StringComparison.Ordinal
        );
        Assert.InRange(match, 0, Array.FindIndex(steps, step => step.Contains("Join top-1 to", StringComparison.Ordinal)) - 1);
    }

    [Fact]
    public void With_an_edging_in_the_seam_the_notches_are_matched()
    {
        const string Notches = "where an edging lies in the seam, match the notches instead";
        CushionSpecification welted = Boxed(14, 16, 3, HandSewn) with
        {
            Trim = new TrimSpecification { Edging = new WeltSpecification([EdgingPlace.Top], In(0.25m), WeltCut.Bias) },
        };

        Assert.Contains(Steps(welted, Printed), step => step.Contains(Notches, StringComparison.Ordinal));
        Assert.DoesNotContain(Steps(Boxed(14, 16, 3, HandSewn), Printed), step => step.Contains(Notches, StringComparison.Ordinal));
    }

    [Fact]
    public void Upright_seams_are_matched_where_the_boxing_is_all_round()
    {
        CushionSpecification box = Boxed(14, 16, 3, HandSewn);
        CushionSpecification allRound = box with { Match = MatchSpecification.Usual with { Boxing = BoxingMatch.AllRound } };

        Assert.Contains(
            Steps(allRound, Printed),
            step =>
                step.Contains("the front edge of top and the upright seams of the boxing (there on one level)", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(Steps(box, Printed), step => step.Contains("upright seams", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_joins_only_those_at_which_the_print_meets_are_named()
    {
        // Sources.Derived: of the boxing's five panels the middle three lie along the front and carry its print on; the two that run back
        // along the slanted sides do not.
        CushionSpecification bench = Boxed(24, 24, 3, BackZipper, BoxingJoins.Back) with
        {
            Outline = new TrapezoidOutline(In(87.5m), In(79.5m), In(24), In(4)),
            Trim = new TrimSpecification { FaceJoins = FaceJoins.Allow },
        };
        FabricSpecification print = Fabric with
        {
            Width = In(45),
            Repeat = new RepeatSpecification(In(14), In(14), DropKind.Straight) { MotifX = In(4.67m), MotifY = In(14) },
        };
        string step = Steps(bench, print).Single(text => text.Contains("The print meets", StringComparison.Ordinal));

        Assert.Contains(
            "the join of boxing-2 and boxing-3, the join of boxing-3 and boxing-4 and the front edge of top",
            step,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("the joins of boxing", step, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_matched_of_a_plain_fabric_or_where_the_order_asks_for_nothing()
    {
        MatchSpecification free = new(FaceMatch.Free, UndersideMatch.Free, BoxingMatch.Free);

        Assert.DoesNotContain(Steps(Bench, Fabric), step => step.Contains("The print meets", StringComparison.Ordinal));
        Assert.DoesNotContain(
            Steps(Bench with { Match = free }, Printed),
            step => step.Contains("The print meets", StringComparison.Ordinal)
        );
    }

    private static string[] Steps(CushionSpecification cushion, FabricSpecification fabric) =>
        [.. Quote(Order(cushion, fabric)).Steps.Select(step => step.Text.ToString())];
}
