using CushionService.Engine.Cutting;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>Flat piping, bought trims, topstitching and French seams.</summary>
public sealed class EdgeTrimFacts
{
    [Theory]
    [InlineData(0.125, 0.5, 1.25, Sources.NewDressmaker)] // a folded strip: 2 × 1/8 + 2 × 1/2
    [InlineData(0.25, 0.5, 1.5, Sources.Practice)]
    [InlineData(0.25, 0.375, 1.25, Sources.Practice)]
    [InlineData(0.5, 0.625, 2.25, Sources.Practice)]
    public void A_strip_of_flat_piping_is_twice_its_depth_and_two_allowances_wide(double depth, double seam, double width, string source)
    {
        Assert.NotEmpty(source);
        Length cut = new FlatPipingSpecification([EdgingPlace.Top], In((decimal)depth), WeltCut.Crosswise).Width(In((decimal)seam));
        Assert.Equal(In((decimal)width), cut);
    }

    [Fact]
    public void Flat_piping_is_cut_like_a_welt_and_takes_no_cord()
    {
        // Sources.Practice: 72 round, 2 to close, 1 1/4 for a strip's end = 75 1/4. Of 54 in, 52 3/4 a strip is sure, so 2 strips of
        // 37 5/8 + 1 1/4 = 38 7/8.
        CushionSpecification cushion = KnifeEdge(18, 18, HandSewn) with
        {
            Trim = new TrimSpecification { Edging = new FlatPipingSpecification([EdgingPlace.Top], In(0.125m), WeltCut.Crosswise) },
        };
        CutPiece piping = Drafting.Of(Order(cushion)).Pieces.Single(piece => piece.Part.Kind == PartKind.FlatPiping);

        Assert.Equal((2, In(38.875m), In(1.25m)), (piping.Quantity, piping.Width, piping.Length));
        Assert.DoesNotContain(Trade.Quote(Order(cushion)).Materials, material => material.Kind == MaterialKind.Cord);
        // Sewn once round, and basted once: no run round a cord.
        Assert.Equal(In(144), Threading.Stitching(cushion, Pattern(cushion)));
    }

    [Theory]
    [InlineData(EdgingKind.LipCord, MaterialKind.LipCord, 2.125)] // 72 + 2 = 74 in = 2.06 yd
    [InlineData(EdgingKind.Fringe, MaterialKind.Fringe, 2.125)]
    [InlineData(EdgingKind.Gimp, MaterialKind.Gimp, 2.125)]
    public void A_bought_trim_is_as_long_as_its_seam_and_the_overlap_of_its_ends(EdgingKind kind, MaterialKind bought, double yards)
    {
        // Sources.Practice.
        TrimAttachment attached = kind == EdgingKind.Gimp ? TrimAttachment.SewnOn : TrimAttachment.SewnIn;
        Quote quote = Quoted(KnifeEdge(18, 18, HandSewn), new BoughtTrimSpecification([EdgingPlace.Top], kind, attached, In(0.5m)));

        Assert.Equal((decimal)yards, quote.Materials.Single(material => material.Kind == bought).Quantity);
    }

    [Fact]
    public void Trims_of_the_ends_of_a_waterfall_follow_both_side_panels()
    {
        // Sources.Practice: each side 2 × 20 + 3 along top, front and bottom, and 3 at the back: 46 + 2 = 48 in, 96 = 2 2/3 yd.
        CushionSpecification cushion = Boxed(24, 20, 3, BackZipper) with
        {
            Construction = Construction.Waterfall,
        };
        Quote quote = Quoted(
            cushion,
            new BoughtTrimSpecification([EdgingPlace.Left, EdgingPlace.Right], EdgingKind.LipCord, TrimAttachment.SewnIn, In(0.375m))
        );

        Assert.Equal(2.75m, quote.Materials.Single(material => material.Kind == MaterialKind.LipCord).Quantity);
    }

    [Theory]
    [InlineData(1, 144)] // sewn once, topstitched once
    [InlineData(2, 216)]
    public void Topstitching_takes_thread_for_each_row(int rows, int inches)
    {
        // Sources.Derived.
        CushionSpecification cushion = KnifeEdge(18, 18, HandSewn) with
        {
            Trim = new TrimSpecification { Edging = new TopstitchSpecification([EdgingPlace.Top], In(0.25m), rows) },
        };

        Assert.Equal(In(inches), Threading.Stitching(cushion, Pattern(cushion)));
    }

    [Theory]
    [InlineData(Construction.Mitred)]
    [InlineData(Construction.GatheredCorner)]
    public void Faces_that_meet_at_half_the_height_are_topstitched_one_at_a_time(Construction construction)
    {
        // Sources.Practice: rows through both would sew the sides flat, and the cover would lose its height.
        CushionSpecification cushion = Boxed(20, 20, 4, BackZipper) with
        {
            Construction = construction,
            Trim = new TrimSpecification { Edging = new TopstitchSpecification([EdgingPlace.Top], In(0.25m), 1) },
        };
        string step = Trade
            .Quote(Order(cushion))
            .Steps.Select(one => one.Text.ToString())
            .Single(text => text.Contains("topstitch", StringComparison.Ordinal));

        Assert.Contains("Turn the seam allowances towards the top and topstitch them down", step, StringComparison.Ordinal);
        Assert.DoesNotContain("both faces", step, StringComparison.Ordinal);
    }

    [Fact]
    public void A_boxed_seam_is_topstitched_while_the_cover_lies_flat_and_the_last_one_through_the_opening()
    {
        // Sources.Practice.
        CushionSpecification cushion = Boxed(24, 20, 3, BackZipper) with
        {
            Trim = new TrimSpecification { Edging = new TopstitchSpecification([EdgingPlace.Top, EdgingPlace.Bottom], In(0.25m), 1) },
        };
        string[] steps = [.. Trade.Quote(Order(cushion)).Steps.Select(step => step.Text.ToString())];
        int[] order =
        [
            At("Sew the top to the boxing"),
            At("top and topstitch them down"),
            At("Sew the bottom to the boxing"),
            At("right side out through"),
            At("bottom and topstitch them down"),
        ];

        Assert.DoesNotContain(-1, order);
        Assert.Equal(order.Order(), order);

        int At(string said) => Array.FindIndex(steps, text => text.Contains(said, StringComparison.Ordinal));
    }

    [Fact]
    public void A_French_seam_is_sewn_twice_and_encloses_its_raw_edges()
    {
        // Sources.Derived: 72 + 72 round, hems of 2 × 18, and the flaps' ends basted over 4 at both sides.
        CushionSpecification cushion = French;

        Assert.Equal(In(188), Threading.Stitching(cushion, Pattern(cushion)));
        Assert.Equal(Length.Zero, Threading.RawEdges(cushion, Pattern(cushion)));
        // Plain, the top has 4 × 19 and the flaps 2 × (19 + 2 × 12 1/2), as they are cut.
        Assert.Equal(In(164), Threading.RawEdges(cushion with { Trim = TrimSpecification.None }, Pattern(cushion)));
    }

    [Fact]
    public void Only_what_a_French_seam_does_not_enclose_is_finished()
    {
        // Sources.Practice: the zipper's two edges, cut 17 in long.
        CushionSpecification cushion = KnifeEdge(16, 16, new ZipperClosure(Side.Bottom, Length.Zero, In(0.75m), Length.Zero)) with
        {
            EdgeFinish = RawEdgeFinish.Overedge,
            Trim = French.Trim,
        };
        string step = Trade
            .Quote(Order(cushion))
            .Steps.Select(one => one.Text.ToString())
            .Single(text => text.Contains("Overedge", StringComparison.Ordinal));

        Assert.Equal(In(34), Threading.RawEdges(cushion, Pattern(cushion)));
        Assert.Contains("the raw edges that the French seam does not enclose", step, StringComparison.Ordinal);
    }

    [Fact]
    public void The_narrow_row_of_a_French_seam_comes_first()
    {
        // Sources.Practice: of 1/2 in, 1/4 in to the first row and 1/4 in to the second; trimmed to 1/8 in between.
        string[] steps = [.. Trade.Quote(Order(French)).Steps.Select(step => step.Text.ToString())];
        int first = Array.FindIndex(steps, text => text.Contains("sew them 1/4 in from the raw edges", StringComparison.Ordinal)),
            second = Array.FindIndex(steps, text => text.Contains("sew round once more 1/4 in from it", StringComparison.Ordinal)),
            turned = Array.FindIndex(steps, text => text.Contains("right side out through", StringComparison.Ordinal));

        Assert.True(first > 0 && first < second && second < turned);
        Assert.Contains("trim the allowances to 1/8 in", steps[first], StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_sewn_on_over_a_seam_comes_after_turning_and_before_the_filling()
    {
        // Sources.Practice.
        CushionSpecification cushion = Boxed(24, 22, 4, BackZipper) with
        {
            Fill = new FillSpecification(FillKind.Foam, "foam", null, Length.Zero, 1),
            Trim = new TrimSpecification
            {
                Edging = new BoughtTrimSpecification([EdgingPlace.Top], EdgingKind.Fringe, TrimAttachment.SewnOn, In(2)),
            },
        };
        string[] steps = [.. Trade.Quote(Order(cushion)).Steps.Select(step => step.Text.ToString())];
        int on = Array.FindIndex(
            steps,
            text => text.Contains("Sew the fringe by both edges of its heading by hand over the seam", StringComparison.Ordinal)
        );

        Assert.True(Array.FindIndex(steps, text => text.Contains("right side out through", StringComparison.Ordinal)) < on);
        Assert.True(on < Array.FindIndex(steps, text => text.Contains("Fold the foam in half", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(EdgingKind.Fringe)]
    [InlineData(EdgingKind.Gimp)]
    public void A_trim_that_is_sewn_on_takes_thread_along_both_its_edges(EdgingKind kind)
    {
        // Sources.Practice: 72 round the cover, and twice 72 by hand.
        CushionSpecification cushion = KnifeEdge(18, 18, HandSewn) with
        {
            Trim = new TrimSpecification { Edging = new BoughtTrimSpecification([EdgingPlace.Top], kind, TrimAttachment.SewnOn, In(1)) },
        };

        Assert.Equal(In(72 + (2 * 72)), Threading.Stitching(cushion, Pattern(cushion)));
    }

    [Fact]
    public void What_is_sewn_on_over_a_gap_comes_once_the_gap_is_closed()
    {
        // Sources.Practice: over the open gap it would sew the cover shut before it is filled.
        CushionSpecification cushion = KnifeEdge(18, 18, HandSewn) with
        {
            Fill = new FillSpecification(FillKind.Loose, "fibre", 20, Length.Zero, 0.9m),
            Trim = new TrimSpecification
            {
                Edging = new BoughtTrimSpecification([EdgingPlace.Top], EdgingKind.Gimp, TrimAttachment.SewnOn, In(0.5m)),
            },
        };
        string[] steps = [.. Trade.Quote(Order(cushion)).Steps.Select(step => step.Text.ToString())];
        int on = Array.FindIndex(
                steps,
                text =>
                    text.Contains("Sew the gimp by both its edges by hand over the seam of the top, 72 in round", StringComparison.Ordinal)
            ),
            filled = Array.FindIndex(steps, text => text.Contains("Fill the cover", StringComparison.Ordinal)),
            closed = Array.FindIndex(steps, text => text.Contains("Close the gap by hand", StringComparison.Ordinal));

        Assert.True(filled > 0 && filled < closed && closed < on);
    }

    [Fact]
    public void What_is_sewn_on_along_a_zipper_leaves_the_cover_open()
    {
        // Sources.Practice: a knife-edge cover opens in the very seam that the trim lies over; a box opens in its boxing.
        var gimp = new BoughtTrimSpecification([EdgingPlace.Top], EdgingKind.Gimp, TrimAttachment.SewnOn, In(0.5m));

        Assert.Contains(
            Quoted(KnifeEdge(18, 18, BackZipper), gimp).Steps,
            step => step.Text.ToString().EndsWith("; along the opening catch the top alone.", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(
            Quoted(Boxed(24, 22, 4, BackZipper), gimp).Steps,
            step => step.Text.ToString().Contains("along the opening", StringComparison.Ordinal)
        );
    }

    private static CushionSpecification French { get; } =
        KnifeEdge(18, 18, new EnvelopeClosure(Side.Bottom, In(0.5m), In(4))) with
        {
            Trim = new TrimSpecification { Edging = new FrenchSeamSpecification([EdgingPlace.Top], In(0.25m)) },
        };

    private static Pattern Pattern(CushionSpecification cushion) => Drafting.Of(Order(cushion)).Patterns[0];

    private static Quote Quoted(CushionSpecification cushion, EdgingSpecification edging) =>
        Trade.Quote(Order(cushion with { Trim = new TrimSpecification { Edging = edging } }));
}
