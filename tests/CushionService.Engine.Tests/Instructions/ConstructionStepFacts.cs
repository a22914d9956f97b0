using CushionService.Engine.Cutting;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
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

/// <summary>The order of sewing, the marks and the fill of the rarer constructions (common practice, no source, where no other is
/// named).</summary>
public sealed class ConstructionStepFacts
{
    private static readonly FillSpecification Foam = new(FillKind.Foam, "foam", 28.8332m, Length.Zero, 0.9m);

    [Fact]
    public void Gores_are_sewn_in_halves_and_the_base_last()
    {
        CushionSpecification pouf = Boxed(1, 1, 12, new ZipperClosure(Side.Bottom, Length.Zero, In(0.75m))) with
        {
            Construction = Construction.Pouf,
            Outline = new CircleOutline(In(20)),
            Gores = 8,
        };
        Pattern pattern = Drafting.Of(Order(pouf)).Patterns[0];

        Assert.Equal(
            ["1-2", "3-4", "5-6", "7-8", "2-3", "6-7", "4-5", "8-1"],
            pattern.Seams.Take(8).Select(seam => $"{seam.One[0].Part.ToString()[5..]}-{seam.Other[0].Part.ToString()[5..]}")
        );
        Assert.Equal(PartKind.Bottom, pattern.Seams[^1].Other[0].Part.Kind);
        InOrder(
            pouf,
            "Sew the gores right sides together, into two halves of 4 and the halves to each other, ",
            "into a loop",
            "closure edges of bottom-front and bottom-back",
            "Sew the top to the wall",
            "Sew the bottom to the wall"
        );
        // An odd number has no halves.
        InOrder(pouf with { Gores = 5 }, "Sew the gores right sides together, each to the next until they close round, ");
        InOrder(pouf with { Gores = 6 }, "into two halves of 3 and");
    }

    [Fact]
    public void A_base_is_basted_to_flat_corners_and_gathered_with_them() =>
        // It is cut like the underside, so it has as much to draw up.
        InOrder(
            Boxed(16, 16, 3, HandSewn) with
            {
                Construction = Construction.GatheredCorner,
                Trim = new TrimSpecification { Base = BaseKind.AntiSlip },
            },
            "Cut the anti-slip base like bottom",
            "of bottom and its base as one, 1/8 in on each side of the seam line",
            "Sew the top"
        );

    [Fact]
    public void Flaps_from_the_sides_are_hemmed_at_the_edges_where_they_close() =>
        InOrder(
            KnifeEdge(18, 18, new EnvelopeClosure(Side.Bottom, In(0.5m), In(4)) { Sideways = true }),
            "Fold the right closure edge of bottom-left twice by 1/2 in",
            "Fold the left closure edge of bottom-right twice by 1/2 in"
        );

    [Theory]
    [InlineData("0.5", true)]
    [InlineData("0.75", false)]
    public void Buttons_that_lie_beyond_their_hems_have_a_scrap_behind_them(string fold, bool scrap)
    {
        // Half of an overlap of 1 1/4 in from the edge of a hem.
        Length hem = In(decimal.Parse(fold, System.Globalization.CultureInfo.InvariantCulture));
        CushionSpecification pillow = KnifeEdge(18, 18, new ButtonClosure(Side.Bottom, Length.Zero, hem, In(1.25m), In(0.75m)));

        InOrder(
            pillow,
            "sew the buttons to bottom-front at its marks"
                + (scrap ? ", a scrap of the fabric behind each, since they lie beyond the hems." : ".")
        );
    }

    // Sources.ChapeReplacement: webbing ends are turned under 1/2 in, and so much more is bought.
    [Fact]
    public void Webbing_within_a_strap_is_turned_under_with_it()
    {
        CushionSpecification seat = Boxed(18, 15, 2, HandSewn);

        InOrder(
            seat with
            {
                Handle = Strap with { Kind = HandleKind.StrapAndWebbing },
            },
            "Fold the ends of the handle in by 1/2 in and its long edges to the middle, lay the webbing inside, its ends turned under"
        );
        InOrder(seat with { Handle = Strap }, "its long edges to the middle, fold it in half");
    }

    [Fact]
    public void Narrow_allowances_hold_both_gathering_rows() =>
        // Half of 1/8 in: at the full 1/8 in the outer row would lie on the raw edge.
        InOrder(
            Boxed(16, 16, 3, HandSewn) with
            {
                Construction = Construction.GatheredCorner,
                SeamAllowance = In(0.125m),
            },
            "Run two gathering rows along",
            "1/16 in on each side of the seam line"
        );

    [Fact]
    public void A_flange_is_turned_and_stitched_round_the_body() =>
        InOrder(
            KnifeEdge(18, 18, HandSewn) with
            {
                Construction = Construction.Flanged,
                Flange = new FlangeSpecification(FlangeLayers.Single, In(2), Length.Zero),
            },
            "leave a gap",
            "turn the cover right side out",
            "Stitch round the body on the line of top, 2 in from the edge, through all layers, leaving a gap",
            "Stitch the rest of the line",
            "Close the gap"
        );

    [Fact]
    public void The_notches_of_a_mitred_box_are_sewn_across_after_its_sides() =>
        InOrder(
            Boxed(16, 16, 3, HandSewn) with
            {
                Construction = Construction.Mitred,
            },
            "Sew the top and the bottom together, right sides together",
            "Open the notched corners of the top and the bottom, match their side seams, and sew across each, 12 in in all"
        );

    [Fact]
    public void A_double_flange_is_folded_on_its_line_and_its_marks_lie_on_the_piece()
    {
        CushionSpecification cushion = KnifeEdge(24, 20, new ZipperClosure(Side.Bottom, Length.Zero, In(0.75m))) with
        {
            Construction = Construction.Flanged,
            Flange = new FlangeSpecification(FlangeLayers.Double, In(2), In(0.375m)),
        };
        foreach (CutPiece piece in Drafting.Of(Order(cushion)).Pieces)
        {
            PieceMark[] folds = [.. PieceMarks.Of(piece).Where(mark => mark.Kind == MarkKind.FoldLine)];
            int fold = folds.Count(mark => mark.Because.ToString().StartsWith("Fold the flange back", StringComparison.Ordinal));

            Assert.Equal(piece.Part.ToString() == "top" ? 4 : 3, fold);
            Assert.Equal(folds.Length, folds.Select(mark => (mark.From, mark.To)).Distinct().Count());
        }
    }

    [Fact]
    public void Corners_are_tapered_gathered_and_channels_stitched_before_the_seams()
    {
        InOrder(KnifeEdge(18, 18, HandSewn) with { CornerTaper = In(0.5m) }, "Mark the taper lines of top", "Sew the top");
        InOrder(
            Boxed(16, 16, 3, HandSewn) with
            {
                Construction = Construction.GatheredCorner,
            },
            "Run two gathering rows along front-right, back-right, back-left and front-left of top",
            "Sew the top"
        );
        InOrder(
            Boxed(24, 20, 3, HandSewn) with
            {
                Channels = new ChannelSpecification(4, In(1), default),
            },
            "stitch its 3 channel lines",
            "Sew the top to the boxing"
        );
    }

    [Fact]
    public void A_taper_starts_at_a_quarter_of_the_side_and_ends_half_an_inch_in()
    {
        // 4 1/2 in from the seam corner of an 18 in side.
        Panel top = Drafting.Of(Order(KnifeEdge(18, 18, HandSewn) with { CornerTaper = In(0.5m) })).Patterns[0].Panel("top");
        PanelMark first = top.Marks.First(mark => mark.Kind == MarkKind.TaperLine);

        Assert.Equal((In(4.5m), Length.Zero), (first.From.X, first.From.Y));
        Assert.Equal((In(0.5m), In(0.5m)), (first.To!.Value.X, first.To!.Value.Y));
        Assert.Equal(8, top.Marks.Length);
    }

    [Theory]
    [InlineData(16, 4)]
    [InlineData(24, 4)]
    [InlineData(25, 8)]
    public void A_disc_has_four_notches_and_eight_above_24_inches(int diameter, int notches)
    {
        CushionSpecification round = Boxed(1, 1, 3, HandSewn, BoxingJoins.Back) with { Outline = new CircleOutline(In(diameter)) };
        CutPiece disc = Drafting.Of(Order(round)).Pieces[0];
        PieceMark[] marks = [.. PieceMarks.Of(disc).Where(mark => mark.Kind is MarkKind.Notch or MarkKind.DoubleNotch)];
        double centre = disc.Width.Nanometres / 2.0,
            radius = In(diameter + 1).Nanometres / 2.0;

        Assert.Equal(notches, marks.Length);
        Assert.Single(marks, mark => mark.Kind == MarkKind.DoubleNotch);
        Assert.All(
            marks,
            mark =>
                Assert.InRange(
                    Math.Sqrt(Math.Pow(mark.From.X.Nanometres - centre, 2) + Math.Pow(mark.From.Y.Nanometres - centre, 2)),
                    radius - 500_000,
                    radius + 500_000
                )
        );
    }

    [Fact]
    public void A_waterfall_is_notched_at_the_top_the_middle_and_the_bottom_of_its_curve()
    {
        // Sources.CanvasWork
        CutPiece side = Drafting
            .Of(Order(Boxed(24, 20, 4, HandSewn) with { Construction = Construction.Waterfall, Front = FrontShape.BullNose }))
            .Pieces.Single(piece => piece.Part.ToString() == "right");
        string[] notches =
        [
            .. PieceMarks
                .Of(side)
                .Where(mark => mark.Because.ToString().StartsWith("Notch where", StringComparison.Ordinal))
                .Select(mark => mark.Because.ToString().Split(';')[0]),
        ];

        Assert.Equal(
            ["Notch where top meets front-upper", "Notch where front-upper meets front-lower", "Notch where front-lower meets bottom"],
            notches
        );
    }

    [Fact]
    public void One_way_fabric_on_a_waterfall_and_foam_that_does_not_go_in_are_warned_of()
    {
        CushionSpecification waterfall = Boxed(24, 20, 4, HandSewn) with { Construction = Construction.Waterfall };
        CushionSpecification tight = Boxed(20, 20, 4, new HandSewnClosure(Side.Back)) with
        {
            Outline = new TrapezoidOutline(In(24), In(10), In(20), In(7)),
            Fill = Foam,
        };

        Assert.Equal(
            ["print-inverted"],
            Drafting.Of(Order(waterfall, Fabric with { OneWay = true })).Warnings.Select(warning => warning.Code)
        );
        Assert.Equal(["opening-too-small"], Drafting.Of(Order(tight)).Warnings.Select(warning => warning.Code));
        Assert.Empty(Drafting.Of(Order(Boxed(24, 22, 4, BackZipper, BoxingJoins.Back) with { Fill = Foam })).Warnings);
    }

    [Fact]
    public void A_lopsided_cushion_has_two_mirrored_faces_and_says_which_is_which()
    {
        CushionSpecification bay = KnifeEdge(1, 1, HandSewn) with { Outline = new TrapezoidOutline(In(20), In(12), In(15), In(1)) };
        CutPiece[] faces = [.. Drafting.Of(Order(bay)).Pieces];

        Assert.Equal(
            faces[0].Outline.Select(corner => (faces[0].Width - corner.X, corner.Y)).Order(),
            faces[1].Outline.Select(corner => (corner.X, corner.Y)).Order()
        );
        Assert.NotEqual(faces[0].Outline, faces[1].Outline);
        Assert.All(faces, face => Assert.Single(PieceMarks.Of(face), mark => mark.Kind == MarkKind.FaceName));
    }

    [Fact]
    public void An_inner_cover_is_the_same_again_of_its_own_fabric_and_is_filled_first()
    {
        // Sources.FieldOfficer
        CushionSpecification cushion = KnifeEdge(18, 18, BackZipper with { Return = Length.Zero }) with
        {
            Fill = new FillSpecification(FillKind.Loose, "feather", 52, Length.Zero, 0.9m),
            Fabrics = new FabricRoles("main", "main", "main", "main") { InnerCover = "calico" },
        };
        OrderSpecification order = Order(cushion) with { Fabrics = [Fabric, Fabric with { Id = "calico" }] };

        Assert.Equal("top 19 × 19; bottom 19 × 19; inner-top 19 × 19; inner-bottom 19 × 19", CutList(order));
        Assert.Equal(["main", "main", "calico", "calico"], Drafting.Of(order).Pieces.Select(piece => piece.Fabric));
        InOrder(
            order,
            "Fill the inner cover through the opening",
            "Close the gap by hand",
            "Sew the back seam of the top and the bottom",
            "open the zipper halfway",
            "Sew the other sides of the top and the bottom",
            "Put the filled inner cover in"
        );
    }

    [Fact]
    public void Foam_fills_a_wedge_by_the_mean_of_its_heights_and_a_bull_nose_less_what_it_rounds_off()
    {
        // Sources.Mathematics: 1920 in³ and 1.11111 ft³; 24 × (80 − (1 − π/4) 8) in³; a roll of π 16 × 24 in³.
        CushionSpecification wedge = Boxed(24, 20, 6, HandSewn) with
        {
            Construction = Construction.Wedge,
            FrontThickness = In(2),
        };
        CushionSpecification nose = Boxed(24, 20, 4, HandSewn) with { Construction = Construction.Waterfall, Front = FrontShape.BullNose };

        Assert.Equal(1.11111, (double)Filling.Foam(wedge, Length.Zero).CubicFeet, 1e-5);
        Assert.Equal(24 * (80 - ((1 - (Math.PI / 4)) * 8)), 1728 * (double)Filling.Foam(nose, Length.Zero).CubicFeet, 1e-3);
        Assert.Equal(Math.PI * 16 * 24, 1728 * (double)Filling.Foam(BolsterStepFacts.Roll, Length.Zero).CubicFeet, 1e-3);
    }

    [Fact]
    public void A_zipper_in_a_seam_is_marked_where_it_starts_and_stops_and_a_lap_where_it_is_stitched()
    {
        // An 18 in side less 2 1/2 in, centred: 1 1/4 in from each corner, on both faces.
        Pattern pillow = Drafting
            .Of(Order(KnifeEdge(18, 18, new ZipperClosure(Side.Back, Length.Zero, In(0.875m)) { Lap = In(0.5m) })))
            .Patterns[0];
        foreach (PartName face in (PartName[])[PartName.Top, PartName.Bottom])
        {
            Assert.Equal(
                [In(1.25m), In(16.75m)],
                pillow[face].Marks.Where(mark => mark.Purpose == MarkPurpose.StopZipper).Select(mark => mark.From.X).Order()
            );
        }

        PanelMark lap = Assert.Single(pillow[PartName.Top].Marks, mark => mark.Purpose == MarkPurpose.LapZipper);
        Assert.Equal(In(17.5m), lap.From.Y);
        Assert.DoesNotContain(pillow[PartName.Bottom].Marks, mark => mark.Purpose == MarkPurpose.LapZipper);
    }

    [Theory]
    [InlineData(Side.Back, true)]
    [InlineData(Side.Left, false)]
    public void Ties_in_a_gap_are_sewn_to_the_allowance(Side side, bool inGap)
    {
        // Sources.Practice: the gap's folds are closed by hand, and no machine seam crosses the ties there.
        CushionSpecification cushion = Boxed(20, 20, 4, HandSewn) with
        {
            Trim = new TrimSpecification { Ties = new TieSpecification(3, side, In(12), In(0.5m), StrapMake.Folded) },
        };
        string step = Quote(Order(cushion))
            .Steps.Select(one => one.Text.ToString())
            .Single(text => text.Contains("the ties, two by two", StringComparison.Ordinal));

        Assert.Equal(inGap, step.Contains("sew those that lie in the gap to the allowance", StringComparison.Ordinal));
    }

    // Sources.Derived: a front half is (depth + lap)/2, and the fold of the back comes to a lap below its edge.
    [Theory]
    [InlineData(Construction.KnifeEdge, 8.75)]
    [InlineData(Construction.Boxed, 8.75)]
    [InlineData(Construction.Flanged, 10.75)]
    [InlineData(Construction.Pouf, 8.75)]
    public void A_lapped_zipper_across_the_underside_has_its_line_on_the_front_half(Construction construction, double at)
    {
        CushionSpecification cushion = KnifeEdge(18, 18, new ZipperClosure(Side.Bottom, Length.Zero, In(0.875m)) { Lap = In(0.5m) }) with
        {
            Construction = construction,
            Thickness = construction is Construction.Boxed or Construction.Pouf ? In(4) : Length.Zero,
            Flange = construction == Construction.Flanged ? new FlangeSpecification(FlangeLayers.Single, In(2), Length.Zero) : null,
            Outline = construction == Construction.Pouf ? new CircleOutline(In(18)) : new RectangleOutline(In(18), In(18)),
        };
        Pattern cover = Drafting.Of(Order(cushion)).Patterns[0];
        Panel marked = Assert.Single(cover.Panels, panel => panel.Marks.Any(mark => mark.Purpose == MarkPurpose.LapZipper));
        PanelMark lap = Assert.Single(marked.Marks, mark => mark.Purpose == MarkPurpose.LapZipper);

        Assert.Equal(PartName.Bottom with { Half = FaceHalf.Front }, marked.Part);
        Assert.Equal((In((decimal)at), In((decimal)at)), (lap.From.Y, lap.To!.Value.Y));
    }

    [Fact]
    public void A_lapped_zipper_of_a_bolster_has_its_line_beside_the_edge_that_lies_under()
    {
        Pattern roll = Drafting
            .Of(Order(BolsterStepFacts.Roll with { Closure = new ZipperClosure(Side.Back, Length.Zero, In(0.875m)) { Lap = In(0.5m) } }))
            .Patterns[0];
        PanelMark lap = Assert.Single(roll[new PartName(PartKind.Body)].Marks, mark => mark.Purpose == MarkPurpose.LapZipper);

        Assert.Equal((In(0.5m), In(0.5m)), (lap.From.X, lap.To!.Value.X));
    }
}
