using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>What a cushion measures when it is done.</summary>
public sealed class FinishedCushionFacts
{
    // The boxing's loop is the perimeter on the seam line (general mathematics): 2 × (24 + 22) = 92.
    [Fact]
    public void A_box_has_the_loop_of_its_perimeter()
    {
        FinishedCushion box = FinishedCushion.Of(Drafting.Of(Order(Boxed(24, 22, 4, BackZipper)))).Single();

        Assert.Equal(
            (In(24), In(22), (Length?)In(4), In(0.25m), (Length?)In(92)),
            (box.Width, box.Depth, box.Thickness, box.Tolerance, box.Loop)
        );
    }

    // π × 16 = 50.265 in.
    [Fact]
    public void A_round_box_has_the_loop_of_its_circle()
    {
        CushionSpecification round = Boxed(16, 16, 3, BackZipper) with { Outline = new CircleOutline(In(16)) };

        Assert.Equal(50.265, (double)FinishedCushion.Of(Drafting.Of(Order(round))).Single().Loop!.Value.In(LengthUnit.Inch), 3);
    }

    [Fact]
    public void A_pillow_has_neither_thickness_nor_loop()
    {
        FinishedCushion pillow = FinishedCushion.Of(Drafting.Of(Order(KnifeEdge(18, 12, HandSewn)))).Single();

        Assert.Equal((null, null), (pillow.Thickness, pillow.Loop));
    }

    [Fact]
    public void A_bolster_is_as_wide_as_it_is_long()
    {
        CushionSpecification roll = KnifeEdge(8, 8, HandSewn) with
        {
            Construction = Construction.Bolster,
            Outline = new CircleOutline(In(8)),
            Length = In(30),
            Ends = new BolsterEnds(BolsterEndKind.Flat, Length.Zero, Length.Zero),
        };
        FinishedCushion bolster = FinishedCushion.Of(Drafting.Of(Order(roll))).Single();

        Assert.Equal((In(30), In(8), (Length?)In(8), null), (bolster.Width, bolster.Depth, bolster.Thickness, bolster.Loop));
    }
}
