using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Materials;

/// <summary>How long the raw edges of a cover are: along the line on which its pieces are cut, not along its seams.</summary>
public sealed class RawEdgeFacts
{
    [Theory]
    // Two faces of 19 × 19, which is 8 in more than 18 × 18 twice.
    [InlineData(18, 18, 152, Sources.Derived)]
    // Two of 5 × 3.
    [InlineData(4, 2, 32, Sources.Derived)]
    public void Faces_are_finished_as_far_round_as_they_are_cut(int width, int depth, int edges, string source)
    {
        Assert.Equal(In(edges), Raw(KnifeEdge(width, depth, HandSewn)));
        Assert.NotEmpty(source);
    }

    [Fact]
    public void A_disc_is_finished_round_its_cut_edge() =>
        // General mathematics: a disc of 16 in with seams of 1/2 in is cut 17 in across; two of them are 2 × π × 17.
        Assert.Equal(
            2 * Math.PI * 17,
            (double)Raw(KnifeEdge(1, 1, HandSewn) with { Outline = new CircleOutline(In(16)) }).In(LengthUnit.Inch),
            1e-4
        );

    [Fact]
    public void A_hem_is_no_raw_edge_and_the_sides_of_a_flap_run_on_beside_it()
    {
        // Sources.Derived: a top of 19 × 19, and two flaps of 19 × 12 1/2 on three sides: (18 + 4)/2 + 1/2 + 2 × 1/2 in deep.
        CushionSpecification envelope = KnifeEdge(18, 18, new EnvelopeClosure(Side.Bottom, In(0.5m), In(4)));

        Assert.Equal(In(76 + (2 * (19 + 25))), Raw(envelope));
    }

    [Fact]
    public void The_edges_beside_a_zipper_are_as_long_as_its_strips()
    {
        // Sources.Derived: faces of 25 × 23, two strips of 31 × 3 1/4, a boxing of 62 in, in two pieces of 54 and 10, 5 high.
        CushionSpecification box = Boxed(24, 22, 4, BackZipper, BoxingJoins.Back);

        Assert.Equal(In((2 * 2 * (25 + 23)) + (2 * 2 * 34.25m) + (2 * (54 + 5)) + (2 * (10 + 5))), Raw(box));
    }

    [Fact]
    public void An_inside_corner_shortens_the_cut_edge()
    {
        // General mathematics: all corners square, an outline moved outward by 1/2 in grows by 8 × 1/2 in, with inside corners or
        // without. A tee of 26 × 22 is 96 in round.
        CushionSpecification tee = KnifeEdge(1, 1, HandSewn) with
        {
            Outline = new TeeOutline(In(26), In(22), In(3), In(6)),
        };

        Assert.Equal(In(2 * (96 + 4)), Raw(tee));
    }

    private static HandSewnClosure HandSewn => new(Side.Back);

    private static Length Raw(CushionSpecification cushion) => Threading.RawEdges(cushion, Drafting.Of(Order(cushion)).Patterns[0]);
}
