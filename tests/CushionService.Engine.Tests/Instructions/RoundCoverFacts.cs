using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;
using static CushionService.Engine.Tests.Instructions.StepOrder;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>Covers without corners: what goes round them is a loop, and no sentence has a corner (common practice, no source).</summary>
public sealed class RoundCoverFacts
{
    private static CushionSpecification Round(decimal diameter, decimal thickness) =>
        Boxed(1, 1, thickness, HandSewn, BoxingJoins.Back) with
        {
            Outline = new CircleOutline(In(diameter)),
        };

    [Theory]
    // Sources.Derived: π × 16 is 50.27, one strip of 54 in; π × 22 is 69.12, two; π × 40 is 125.66, three of 53 in at most.
    [InlineData(16, 50.265, "Join boxing into a loop, right sides together (1 join with 1/2 in seams)")]
    [InlineData(22, 69.115, "Join boxing-1 to boxing-2 into a loop, right sides together (2 joins with 1/2 in seams)")]
    [InlineData(40, 125.664, "Join boxing-1 to boxing-2 to boxing-3 into a loop, right sides together (3 joins")]
    public void Strips_that_go_all_round_are_closed_to_a_loop_and_measured(int diameter, double loop, string step)
    {
        CushionSpecification cushion = Round(diameter, 3);

        InOrder(cushion, step, "On the seam line it must measure", "Sew the top to the boxing");
        Assert.Equal(loop, (double)FinishedCushion.Of(Drafting.Of(Order(cushion))).Single().Loop!.Value.In(LengthUnit.Inch), 1e-3);
    }

    [Fact]
    public void A_pouf_of_whole_walls_is_a_loop_as_one_of_gores_is()
    {
        // Sources.Derived: π × 24 is 75.40.
        CushionSpecification pouf = Round(24, 14) with
        {
            Construction = Construction.Pouf,
        };

        InOrder(
            pouf,
            "Join wall-1 to wall-2 into a loop",
            "must measure about 75 3/8 in",
            "Sew the top to the wall",
            "begin at the back and"
        );
        Assert.DoesNotContain(Quote(Order(pouf)).Steps, step => step.Text.ToString().Contains("boxing", StringComparison.Ordinal));
    }

    [Fact]
    public void The_back_of_a_wall_of_gores_is_where_the_first_and_the_last_join() =>
        InOrder(
            Round(20, 14) with
            {
                Construction = Construction.Pouf,
                Gores = 7,
            },
            "Sew the top to the wall",
            "begin at the back, where wall-7 and wall-1 join, and match the joins and notches",
            "Sew the bottom to the wall",
            "begin at the back, where wall-7 and wall-1 join, and match the joins and notches; leave a gap at the back"
        );

    [Fact]
    public void Nothing_is_said_of_corners_where_there_are_none()
    {
        CushionSpecification pad = KnifeEdge(1, 1, BackZipper) with { Outline = new CircleOutline(In(16)) };
        EdgingSpecification[] edgings =
        [
            new BoughtTrimSpecification([EdgingPlace.Top], EdgingKind.Fringe, TrimAttachment.SewnIn, In(2)),
            new BoughtTrimSpecification([EdgingPlace.Top], EdgingKind.LipCord, TrimAttachment.SewnIn, In(0.375m)),
            new RuffleSpecification([EdgingPlace.Top], Fraction.Of(2, 1), In(3), RuffleLining.Folded),
            new WeltSpecification([EdgingPlace.Top], In(0.15625m), WeltCut.Bias),
        ];
        foreach (EdgingSpecification edging in edgings)
        {
            string[] steps =
            [
                .. Quote(Order(pad with { Trim = new TrimSpecification { Edging = edging } })).Steps.Select(step => step.Text.ToString()),
            ];

            Assert.DoesNotContain(steps, text => text.Contains("corner", StringComparison.Ordinal));
            Assert.Contains(steps, text => text.Contains("in from each end of that side to the zipper's mark", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Corners_are_spoken_of_where_there_are_some() =>
        InOrder(
            KnifeEdge(18, 18, BackZipper) with
            {
                Trim = new TrimSpecification
                {
                    Edging = new RuffleSpecification([EdgingPlace.Top], Fraction.Of(2, 1), In(3), RuffleLining.Folded),
                },
            },
            "a little fuller at the corners",
            "in from each corner to the zipper's mark"
        );
}
