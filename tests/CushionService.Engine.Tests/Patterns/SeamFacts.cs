using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Patterns;

public sealed class SeamFacts
{
    [Theory]
    [InlineData(22, 20, 3, 84, Sources.Mathematics)]
    [InlineData(24, 22, 4, 92, Sources.Mathematics)]
    [InlineData(12, 12, 3, 48, Sources.Mathematics)]
    public void Boxing_length_is_the_seam_line_perimeter(int width, int depth, int thickness, int perimeter, string source)
    {
        foreach (BoxingJoins joins in Enum.GetValues<BoxingJoins>())
        {
            Pattern pattern = Drafting
                .Of(
                    Order(
                        Boxed(width, depth, thickness, BackZipper with { Return = joins == BoxingJoins.Back ? In(3) : Length.Zero }, joins)
                    )
                )
                .Patterns[0];
            Length OfFace(string face) =>
                pattern
                    .Seams.Where(seam => seam.Other.All(edge => edge.Part.ToString() == face))
                    .Aggregate(Length.Zero, (sum, seam) => sum + pattern.LengthOf(seam));

            Assert.Equal(In(perimeter), OfFace("top"));
            Assert.Equal(In(perimeter), OfFace("bottom"));
        }
    }

    [Fact]
    public void Two_hemmed_strips_make_the_boxing_s_height_but_for_their_overlap()
    {
        Pattern pattern = Drafting.Of(Order(Boxed(22, 20, 4, HookAndLoop(0.5m, 1)))).Patterns[0];
        Seam corner = pattern.Seams.First(seam => seam.Lap > Length.Zero);

        Assert.Equal(In(1), corner.Lap);
        Assert.Equal(In(4), pattern.LengthOf(corner));
        Assert.Equal(In(5), corner.Other.Aggregate(Length.Zero, (sum, edge) => sum + pattern[edge.Part][edge.Edge].Length));
    }

    [Fact]
    public void The_flaps_of_an_envelope_cover_the_face_once_they_overlap()
    {
        // Sources.Derived: 2 (12 1/2 − 1/2 − 1) − 4 = 18.
        Pattern pattern = Drafting.Of(Order(KnifeEdge(18, 18, new EnvelopeClosure(Side.Bottom, In(0.5m), In(4))))).Patterns[0];

        Assert.Equal(In(22), pattern.Panel("bottom-front").Height + pattern.Panel("bottom-back").Height);
        Assert.Equal(2, pattern.Seams.Count(seam => seam.Lap == In(4)));
    }

    [Fact]
    public void A_gap_for_turning_is_left_on_the_side_of_a_hand_sewn_closure()
    {
        foreach (
            CushionSpecification cushion in new[]
            {
                KnifeEdge(18, 18, new HandSewnClosure(Side.Left)),
                Boxed(18, 18, 3, new HandSewnClosure(Side.Left)),
            }
        )
        {
            Seam gap = Assert.Single(Drafting.Of(Order(cushion)).Patterns[0].Seams, seam => seam.Kind == SeamKind.Gap);
            Assert.Equal(new EdgeRef(PartName.Bottom, EdgeName.Left), Assert.Single(gap.Other));
        }
    }
}
