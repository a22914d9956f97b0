using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;
using static CushionService.Engine.Tests.Instructions.StepOrder;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>What steps say of gathers, curves, tubes and inner covers (common practice, no source).</summary>
public sealed class ShapeStepFacts
{
    private static readonly BolsterEnds Gathered = new(BolsterEndKind.Gathered, Length.Zero, In(0.75m));

    [Fact]
    public void A_gathered_corner_counts_as_long_as_it_is_drawn_up_to()
    {
        // 4 (16 - 3) + 4 × 3, though each quarter round the corner is π × 3 / 2 before.
        InOrder(
            Boxed(16, 16, 3, HandSewn) with
            {
                Construction = Construction.GatheredCorner,
            },
            "draw each up from",
            "Sew the top and the bottom together, right sides together and notches matched, 64 in with"
        );
    }

    [Fact]
    public void Straight_sides_of_a_curved_outline_are_not_clipped()
    {
        InOrder(
            Boxed(16, 16, 3, HandSewn) with
            {
                Outline = new DShapeOutline(In(20), In(18)),
            },
            "Clip the boxing along the curves every 1/2 in"
        );
        InOrder(Boxed(16, 16, 3, HandSewn) with { Outline = new CircleOutline(In(16)) }, "Clip the boxing every 1/2 in");
    }

    [Fact]
    public void Along_a_hollow_the_face_is_clipped_and_not_the_boxing()
    {
        string[] steps =
        [
            .. Quote(Order(Boxed(40, 30, 4, HandSewn) with { Outline = HollowFront(Length.Zero) }))
                .Steps.Select(step => step.Text.ToString()),
        ];

        Assert.Contains(
            steps,
            step =>
                step.Contains(
                    "Stay-stitch the top just outside the seam line along the hollow curves, and clip it there every 1/2 in",
                    StringComparison.Ordinal
                )
        );
        Assert.DoesNotContain(steps, step => step.Contains("Clip the boxing", StringComparison.Ordinal));
    }

    [Fact]
    public void A_hollow_is_stay_stitched_and_clipped_before_an_edging_lies_on_it() =>
        InOrder(
            Boxed(40, 30, 4, HandSewn) with
            {
                Outline = HollowFront(Length.Zero),
                Trim = new TrimSpecification { Edging = new WeltSpecification([EdgingPlace.Top], In(0.15625m), WeltCut.Bias) },
            },
            "Stay-stitch the top just outside the seam line along the hollow curves",
            "Baste the welt to the right side of the top",
            "Sew the top to the boxing"
        );

    // Common practice, no source: turned, the allowance of a hollow is too short for its place; a notch takes away what is missing.
    [Fact]
    public void Two_faces_are_clipped_along_a_hollow_and_notched_along_an_outward_curve()
    {
        InOrder(
            KnifeEdge(40, 30, HandSewn) with
            {
                Outline = HollowFront(Length.Zero),
            },
            "Clip the allowances along the hollow curves every 1/2 in to within 1/8 in of the seam. Clip the outward corners"
        );
        InOrder(
            KnifeEdge(40, 30, HandSewn) with
            {
                Outline = HollowFront(In(6)),
            },
            "Notch the allowances along the outward curves, and clip them along the hollow ones, every 1/2 in to within 1/8 in"
        );
        InOrder(
            KnifeEdge(16, 16, HandSewn) with
            {
                Outline = new CircleOutline(In(16)),
            },
            "Notch the allowances along the curves every 1/2 in to within 1/8 in"
        );
    }

    // An arc of 25 in bends in along the front of 40 in; the other sides are straight, the corners at the back round.
    private static PolygonOutline HollowFront(Length backRadius) =>
        new(
            [new Point(In(0), In(0)), new Point(In(40), In(0)), new Point(In(40), In(30)), new Point(In(0), In(30))],
            [Length.Zero, Length.Zero, backRadius, backRadius],
            [PolygonOutline.SweepOfRadius(In(40), In(-25)), 0, 0, 0]
        );

    [Fact]
    public void A_tube_that_is_lapped_right_side_up_is_not_turned()
    {
        CushionSpecification roll = BolsterStepFacts.Roll with { Ends = Gathered };

        InOrder(
            roll with
            {
                Closure = new ButtonClosure(Side.Back, Length.Zero, In(0.5m), In(1.25m), In(0.75m)),
            },
            "both right side up",
            "Press the cover.",
            "draw it up to the middle of the end"
        );
        InOrder(roll, "Turn the cover right side out through an open end");
    }

    [Fact]
    public void A_gap_lies_in_the_body_alone_where_its_ends_are_drawn_up()
    {
        // 20 + 2 × 7/2 long, of which the gap has 20 less 2 in at each end.
        CushionSpecification roll = BolsterStepFacts.Roll with
        {
            Outline = new CircleOutline(In(7)),
            Length = In(20),
            Closure = HandSewn,
            Ends = Gathered,
        };

        InOrder(
            roll,
            "to each other, right sides together, 27 in in all with 1/2 in seams; leave a gap along the body, 2 in short of the marks"
        );
        Assert.Equal(In(16), OpeningTest.Opening(roll, Drafting.Of(Order(roll)).Patterns[0], []));
    }

    [Fact]
    public void Half_of_a_short_seam_stays_open_for_turning()
    {
        // A quarter of 3 in at each end, not 2 in from each.
        CushionSpecification pad = KnifeEdge(3, 3, HandSewn);

        InOrder(pad, "leave a gap in the back seam, 3/4 in short of each corner", "through the gap");
        Assert.Equal(In(1.5m), OpeningTest.Opening(pad, Drafting.Of(Order(pad)).Patterns[0], []));
    }

    [Fact]
    public void Edges_that_a_hem_or_a_turning_encloses_are_not_finished_besides()
    {
        // Their thread is not counted either.
        CushionSpecification pillow = KnifeEdge(18, 18, BackZipper with { Return = Length.Zero }) with
        {
            EdgeFinish = RawEdgeFinish.Overedge,
        };
        const string But = "but for those that a hem or a turning encloses, taking nothing off";

        InOrder(pillow, "the raw edges of every piece of the cover, taking nothing off");
        InOrder(pillow with { Closure = new EnvelopeClosure(Side.Bottom, In(0.5m), In(4)) }, $"of every piece of the cover, {But}");
        InOrder(
            pillow with
            {
                Construction = Construction.Flanged,
                Flange = new FlangeSpecification(FlangeLayers.Double, In(2), In(0.5m)),
                Closure = new ZipperClosure(Side.Bottom, Length.Zero, In(0.75m)),
            },
            But
        );
    }

    [Fact]
    public void The_corners_of_a_French_seam_are_trimmed_between_its_rows_and_never_after()
    {
        CushionSpecification pillow = KnifeEdge(18, 18, new EnvelopeClosure(Side.Bottom, In(0.5m), In(4)));
        pillow = pillow with { Trim = pillow.Trim with { Edging = new FrenchSeamSpecification([EdgingPlace.Top], In(0.25m)) } };

        InOrder(pillow, "trim the allowances to 1/8 in, and across the corners", "Turn the cover right side out through the overlap");
    }

    [Fact]
    public void Piping_of_coated_fabric_is_creased_with_a_finger()
    {
        CushionSpecification seat = Boxed(16, 16, 3, BackZipper, BoxingJoins.Back);
        seat = seat with { Trim = seat.Trim with { Edging = new FlatPipingSpecification([EdgingPlace.Top], In(0.125m), WeltCut.Bias) } };

        InOrder(
            Order(seat, Fabric with { Coated = true }),
            "Fold the piping strip in half lengthwise, wrong side in, and crease it with a finger"
        );
    }

    [Fact]
    public void What_holds_throughout_is_said_before_an_inner_cover_is_sewn()
    {
        CushionSpecification filled = Boxed(16, 16, 3, BackZipper, BoxingJoins.Back);
        InOrder(
            filled with
            {
                Fabrics = filled.Fabrics with { InnerCover = "main" },
            },
            "Throughout",
            "Sew the top of the inner cover",
            "turn the inner cover right side out",
            "Sew the top to the boxing"
        );
    }

    [Fact]
    public void Corners_are_tapered_on_both_faces_before_their_edges_are_finished_or_the_cut_off_edges_are_finished_again()
    {
        CushionSpecification pillow = KnifeEdge(18, 18, BackZipper with { Return = Length.Zero }) with
        {
            CornerTaper = In(0.5m),
            EdgeFinish = RawEdgeFinish.Overedge,
        };
        OrderSpecification order = Order(pillow);
        Drafting drafting = Drafting.Of(order);

        InOrder(pillow, "and cut the other face to match.", "Overedge (stitch type 504) the raw edges of every piece", "Sew the back seam");
        Assert.Equal(
            ["top", "bottom"],
            Engine
                .Instructions.SewingOrder.Of(order, drafting.Patterns, drafting.Pieces)
                .Single(step => step.Text.ToString().Contains("taper lines", StringComparison.Ordinal))
                .Pieces.Select(piece => piece[(piece.IndexOf('/', StringComparison.Ordinal) + 1)..])
        );
        // Its flaps must lie over each other before the underside can be cut like the top.
        InOrder(
            pillow with
            {
                Closure = new EnvelopeClosure(Side.Bottom, In(0.5m), In(4)),
            },
            "Overedge (stitch type 504) the raw edges of every piece",
            "baste their ends together",
            "and cut the other face to match; finish the new raw edges like the others."
        );
    }

    [Fact]
    public void Curves_of_faces_that_are_sewn_to_each_other_are_notched_before_they_are_turned_and_others_are_not()
    {
        const string Notched = "Notch the allowances along the curves every 1/2 in to within 1/8 in of the seam. ";
        CushionSpecification round = KnifeEdge(1, 1, HandSewn) with { Outline = new CircleOutline(In(16)) };

        InOrder(round, $"{Notched}Turn the cover right side out through the gap");
        InOrder(round with { Outline = new RoundedRectangleOutline(In(18), In(16), In(3)) }, Notched);
        Assert.DoesNotContain("Notch the allowances", Steps(KnifeEdge(16, 16, HandSewn)), StringComparison.Ordinal);
        // Its boxing was clipped to go round.
        Assert.DoesNotContain(
            "Notch the allowances",
            Steps(Boxed(1, 1, 3, HandSewn) with { Outline = new CircleOutline(In(16)) }),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("0.125", false)]
    [InlineData("0.1875", true)]
    public void An_allowance_that_ends_where_a_clip_would_is_not_clipped(string allowance, bool clips)
    {
        // Clips end 1/8 in from the seam line.
        Length seam = In(decimal.Parse(allowance, System.Globalization.CultureInfo.InvariantCulture));
        CushionSpecification round = KnifeEdge(1, 1, HandSewn) with { Outline = new CircleOutline(In(16)), SeamAllowance = seam };

        Assert.Equal(clips, Steps(round).Contains("Notch the allowances", StringComparison.Ordinal));
        Assert.Equal(
            clips,
            Steps(Boxed(1, 1, 3, HandSewn) with { Outline = round.Outline, SeamAllowance = seam })
                .Contains("Clip the boxing", StringComparison.Ordinal)
        );
        Assert.Equal(
            !clips,
            Steps(BolsterStepFacts.Roll with { SeamAllowance = seam })
                .Contains("Sew left-end to the end of the body, right sides together", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_block_as_wide_as_it_is_deep_has_no_narrow_end()
    {
        // A drum of 16 in, 12 in thick, does not fold; nor does a block of 24 by 16.
        CushionSpecification drum = Boxed(16, 16, 12, HandSewn) with
        {
            Outline = new CircleOutline(In(16)),
            Fill = new FillSpecification(FillKind.Foam, "foam", 28.8332m, Length.Zero, 0.9m),
        };

        InOrder(drum, "Press the foam together, feed it in through the opening, and work it into the edge");
        InOrder(
            drum with
            {
                Outline = new RectangleOutline(In(24), In(16)),
            },
            "Press the foam together, feed it in through the opening, narrow end first, and work it into the corners"
        );
    }

    [Fact]
    public void The_line_round_the_body_is_that_of_the_whole_face_where_it_is_joined()
    {
        CushionSpecification wide = KnifeEdge(70, 20, HandSewn) with
        {
            Construction = Construction.Flanged,
            Flange = new FlangeSpecification(FlangeLayers.Single, In(2), Length.Zero),
            Trim = new TrimSpecification { FaceJoins = FaceJoins.Allow },
        };

        InOrder(wide, "Join top-1 to top-2 to top-3", "Stitch round the body on the line of top, 2 in from the edge");
    }

    private static string Steps(CushionSpecification cushion)
    {
        OrderSpecification order = Order(cushion);
        Drafting drafting = Drafting.Of(order);
        return string.Join('\n', Engine.Instructions.SewingOrder.Of(order, drafting.Patterns, drafting.Pieces).Select(step => step.Text));
    }
}
