using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Materials;

/// <summary>What the steps use is on the bill.</summary>
public sealed class StepMaterialFacts
{
    [Fact]
    public void Channels_take_wadding_as_large_as_the_top()
    {
        // Sources.Derived: four channels of 6 in with a crown of 1 in are 4 × 6.43501 + 1 = 26 3/4 in across, and 20 + 1 along.
        CushionSpecification bench = Boxed(24, 20, 3, HandSewn) with
        {
            Channels = new ChannelSpecification(4, In(1), default),
        };
        Material wadding = Quote(Order(bench)).Materials.Single(material => material.Kind == MaterialKind.Batting);

        Assert.StartsWith("seat: 1 × 26 3/4 in × 21 in behind the channels", wadding.Because.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Tied_ends_take_cord()
    {
        // Sources.Practice: 30 in for each end; 2 × 2 × 30 in is 3 3/8 yd.
        CushionSpecification bolster = KnifeEdge(8, 8, HandSewn) with
        {
            Construction = Construction.Bolster,
            Outline = new CircleOutline(In(8)),
            Length = In(24),
            Ends = new BolsterEnds(BolsterEndKind.Tied, In(6), In(0.75m)),
            Quantity = 2,
        };
        Material cord = Quote(Order(bolster)).Materials.Single(material => material.Kind == MaterialKind.Cord);

        Assert.Equal(("end-cord", 3.375m), (cord.Item, cord.Quantity));
        // An inner cover is tied too: twice as much, 240 in, 6 3/4 yd.
        CushionSpecification within = bolster with
        {
            Fabrics = bolster.Fabrics with { InnerCover = bolster.Fabrics.Top },
        };
        Assert.Equal(6.75m, Quote(Order(within)).Materials.Single(material => material.Kind == MaterialKind.Cord).Quantity);
    }

    [Fact]
    public void Gathering_rows_take_thread()
    {
        // Sources.Mathematics: each corner is a quarter of a circle, both faces have four, and each has two rows. The radius of the corners
        // of a cushion 4 in thick is 4 in: 8 × 2 × π/2 × 4 is 100.53.
        CushionSpecification soft = Boxed(24, 24, 4, HandSewn) with
        {
            Construction = Construction.GatheredCorner,
        };

        Assert.Equal(100.531, (double)AdditionStitching.Of(soft, Drafting.Of(Order(soft)).Patterns[0]).In(LengthUnit.Inch), 0.001);
    }

    [Fact]
    public void Bound_edges_take_binding()
    {
        // Sources.Derived: two faces that are cut 19 × 19 have 152 in of raw edge. Sources.Practice: each is bound with one length of tape,
        // 1/2 in more at either end, and 1/2 in goes into the mitre of each of 8 corners: 158 in, 4.39 yd, up to the next 1/8 yd.
        Material binding = Quote(Order(KnifeEdge(18, 18, HandSewn) with { EdgeFinish = RawEdgeFinish.Bound }))
            .Materials.Single(material => material.Kind == MaterialKind.Binding);

        Assert.Equal(("binding", 4.5m), (binding.Item, binding.Quantity));
        Assert.StartsWith(
            "seat: 1 × 158 in: 152 in of raw edge, 2 lengths of tape with 1/2 in more at each end, 8 corners with 1/2 in more each",
            binding.Because.ToString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_round_piece_is_bound_without_mitres()
    {
        // Sources.Mathematics: π × 17 is 53.407 in a face, and 1 in for both ends of its tape: 108.81 in, up to the next 1/8 in.
        CushionSpecification round = KnifeEdge(16, 16, HandSewn) with
        {
            Outline = new CircleOutline(In(16)),
            EdgeFinish = RawEdgeFinish.Bound,
        };
        string because = Quote(Order(round)).Materials.Single(material => material.Kind == MaterialKind.Binding).Because.ToString();

        Assert.StartsWith(
            "seat: 1 × 108 7/8 in: 106 7/8 in of raw edge, 2 lengths of tape with 1/2 in more at each end",
            because,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("corner", because, StringComparison.Ordinal);
    }

    [Fact]
    public void A_binding_is_sewn_on_in_one_row() =>
        // Sources.Practice: folded over the edge, and one row catches both folds: 152 in round two faces that are cut 19 × 19.
        Assert.Equal(
            In(152),
            Sewn(KnifeEdge(18, 18, HandSewn) with { EdgeFinish = RawEdgeFinish.Bound }) - Sewn(KnifeEdge(18, 18, HandSewn))
        );

    [Fact]
    public void Tapes_ties_and_basting_are_stitched()
    {
        // Sources.Derived: tape of 21 in along both edges of both halves, and 1 in of overlap basted at each end.
        CushionSpecification box = Boxed(22, 20, 3, HookAndLoop(0.5m, 1)),
            plain = Boxed(22, 20, 3, HookAndLoop(0.5m, 1)) with { Closure = HandSewn };
        Assert.True(Sewn(box) - Sewn(plain) >= In((4 * 21) + 2));

        // Two pairs of ties of 12 in, a row along each; a welt round the top, once round its cord and once basted.
        CushionSpecification pillow = KnifeEdge(18, 18, HandSewn);
        CushionSpecification tied = pillow with
        {
            Trim = new TrimSpecification { Ties = new TieSpecification(2, Side.Back, In(12), In(0.5m), StrapMake.Folded) },
        };
        CushionSpecification welted = pillow with
        {
            Trim = new TrimSpecification { Edging = new WeltSpecification([EdgingPlace.Top], In(0.15625m), WeltCut.Crosswise) },
        };
        Assert.Equal(In(4 * 12), Sewn(tied) - Sewn(pillow));
        Assert.Equal(In(72 + 2 + 72), Sewn(welted) - Sewn(pillow));
    }

    [Fact]
    public void Nothing_is_bought_to_bind_seams_that_enclose_their_raw_edges() =>
        // Common practice, no source: a French seam leaves no raw edge.
        Assert.DoesNotContain(
            Quote(
                Order(
                    KnifeEdge(18, 18, HandSewn) with
                    {
                        EdgeFinish = RawEdgeFinish.Bound,
                        Trim = new TrimSpecification { Edging = new FrenchSeamSpecification([EdgingPlace.Top], In(0.25m)) },
                    }
                )
            ).Materials,
            material => material.Kind == MaterialKind.Binding
        );

    [Fact]
    public void A_zipper_in_a_seam_is_basted_first() =>
        // Sources.Practice: the seam of 18 in is sewn along both tapes, and its opening of 15 1/2 in is basted.
        Assert.Equal(In(18 + 15.5m), Sewn(KnifeEdge(18, 18, BackZipper)) - Sewn(KnifeEdge(18, 18, HandSewn)));

    [Fact]
    public void An_overedge_takes_its_own_thread()
    {
        // Sources.StitchGeometry: 3 + 4WS + 4TS with W 1/4 in, S 8 to the inch and T 1 mm.
        decimal ratio = Threading.EdgeRatio(RawEdgeFinish.Overedge, WorkroomPractice.Imperial);
        string because = Quote(Order(KnifeEdge(18, 18, HandSewn) with { EdgeFinish = RawEdgeFinish.Overedge }))
            .Materials.Single(material => material.Kind == MaterialKind.Thread)
            .Because.ToString();

        Assert.Equal(3 + (4 * 0.25 * 8) + (4 * 8 / 25.4), (double)ratio, 1e-6);
        Assert.StartsWith("seat: 72 in of stitching and 152 in of raw edge at × 12.26; ", because, StringComparison.Ordinal);
    }

    private static Length Sewn(CushionSpecification cushion) =>
        Threading.Stitching(cushion, Drafting.Of(Order(cushion, Fabric with { Width = In(118) })).Patterns[0]);
}
