using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;
using static CushionService.Engine.Tests.Instructions.StepOrder;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>A waterfall is sewn the same way whether its sheet and its back are whole or joined from panels: both sides from the front
/// notch outward, the ends of the back, then both back edges, open (common practice, no source).</summary>
public sealed class WaterfallStepFacts
{
    private static readonly FabricSpecification Plain = Fabric with { Width = In(45) };

    private static readonly FabricSpecification Printed = Plain with { Repeat = new RepeatSpecification(In(9), In(9), DropKind.Straight) };

    public static TheoryData<string, ClosureSpecification, FabricSpecification, string, string> Joined
    {
        get
        {
            var data = new TheoryData<string, ClosureSpecification, FabricSpecification, string, string>();
            foreach (
                (string surface, FabricSpecification fabric) in (ReadOnlySpan<(string, FabricSpecification)>)
                    [("plain", Plain), ("print", Printed)]
            )
            {
                data.Add(
                    $"zipper, {surface}",
                    BackZipper with
                    {
                        Return = Length.Zero,
                    },
                    fabric,
                    "the section of the closure",
                    "Open the zipper halfway. Sew the section of the closure to both back edges of main, right sides together, 120 in in"
                );
                data.Add(
                    $"hook and loop, {surface}",
                    HookAndLoop(0.5m, 1),
                    fabric,
                    "the section of the closure",
                    "Open the closure. Sew the section of the closure to both back edges of main, right sides together, 120 in in"
                );
                data.Add(
                    $"by hand, {surface}",
                    HandSewn,
                    fabric,
                    "back",
                    "Sew back to both back edges of main, right sides together, 120 in in all with 1/2 in seams; leave a gap "
                        + "in the seam along the underside, 2 in short of each corner"
                );
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Joined))]
    public void A_sheet_that_is_joined_is_sewn_as_a_whole_one(
        string what,
        ClosureSpecification closure,
        FabricSpecification fabric,
        string back,
        string last
    )
    {
        // 60 in of 45 in fabric. Each side runs 18 + 4 + 18 in; the ends of the back are twice 4 in, its long edges twice 60.
        CushionSpecification waterfall = Boxed(60, 18, 4, closure) with
        {
            Construction = Construction.Waterfall,
            Trim = new TrimSpecification { FaceJoins = FaceJoins.Allow },
        };
        Assert.NotEmpty(what);
        InOrder(
            Order(waterfall, fabric),
            "Join main-1 to main-2 to main-3",
            "Sew right to main, right sides together, 40 in in all with 1/2 in seams: from the front notch outward",
            "Sew left to main, right sides together, 40 in in all with 1/2 in seams: from the front notch outward",
            $"Sew the ends of {back} to right and left, right sides together, 8 in in all",
            last,
            "turn the cover right side out"
        );
    }

    [Fact]
    public void The_welt_of_its_sides_runs_past_the_ends_of_the_back()
    {
        CushionSpecification welted = Boxed(20, 20, 4, HandSewn) with
        {
            Construction = Construction.Waterfall,
            Trim = new TrimSpecification
            {
                Edging = new WeltSpecification([EdgingPlace.Left, EdgingPlace.Right], In(0.15625m), WeltCut.Bias),
            },
        };
        const string Ends = "Sew the ends of back to right and left, right sides together, 8 in in all with 1/2 in seams";

        InOrder(welted, $"{Ends}, close to the edging.");
        InOrder(welted with { Trim = new TrimSpecification() }, $"{Ends}.");
    }

    [Fact]
    public void A_bull_nose_is_clipped_as_other_curves_are()
    {
        CushionSpecification nosed = Boxed(20, 20, 4, HandSewn) with { Construction = Construction.Waterfall, Front = FrontShape.BullNose };

        InOrder(nosed, "to the back; clip main round the front every 1/2 in to within 1/8 in of the seam line.");
        // Clips end 1/8 in from the seam line.
        InOrder(nosed with { SeamAllowance = In(0.125m) }, "once along the underside, to the back.");
        InOrder(nosed with { Front = FrontShape.Square }, "to the back; clip main at the two front corners.");
    }

    [Fact]
    public void A_side_that_is_joined_has_the_name_of_the_whole_side()
    {
        // A cushion 50 in deep of 45 in fabric: each side runs 50 + 4 + 50 in.
        CushionSpecification deep = Boxed(40, 50, 4, BackZipper with { Return = Length.Zero }) with
        {
            Construction = Construction.Waterfall,
            Trim = new TrimSpecification { FaceJoins = FaceJoins.Allow },
        };
        InOrder(
            Order(deep, Plain),
            "Sew right to main, right sides together, 104 in in all",
            "Sew left to main, right sides together, 104 in in all",
            "Sew the ends of the section of the closure to right and left, right sides together, 8 in in all"
        );
    }
}
