using CushionService.Engine.Cutting;
using CushionService.Engine.Instructions;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;
using static CushionService.Engine.Tests.Patterns.TrimmedCushion;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>What is added to a cover: its cut sizes, counts, marks and materials.</summary>
public sealed class AdditionFacts
{
    [Theory]
    [InlineData(StrapMake.Folded, 0.5, 2, Sources.Mathematics)]
    [InlineData(StrapMake.Tube, 0.5, 1.5, Sources.Mathematics)]
    [InlineData(StrapMake.Folded, 1, 4, Sources.Mathematics)]
    public void A_tie_is_cut_four_widths_folded_or_two_and_two_narrow_seams(StrapMake make, double width, double cut, string source)
    {
        CutPiece tie = Piece(
            "tie",
            KnifeEdge(16, 16, HandSewn),
            new TrimSpecification { Ties = new TieSpecification(2, Side.Back, In(12), In((decimal)width), make) }
        );

        Assert.Equal(In((decimal)cut), tie.Width);
    }

    [Fact]
    public void A_tie_of_12_inches_is_cut_13_and_a_seat_pad_has_four()
    {
        // Sources.Practice: finished + seam end 1/2 + turned end 1/2; two pairs on a seat pad.
        Drafting pad = Draft(
            KnifeEdge(16, 16, HandSewn),
            new TrimSpecification { Ties = new TieSpecification(2, Side.Back, In(12), In(0.5m), StrapMake.Folded) }
        );
        CutPiece tie = pad.Pieces.Single(piece => piece.Part.ToString() == "tie");

        Assert.Equal((4, In(13)), (tie.Quantity, tie.Length));
        Assert.Equal("4 layers of 1/2 in by 12 in + 1/2 in seam + 1/2 in turn-in", Derivation.Of(tie).ToString());
        Assert.Equal([In(15), In(1)], pad.Patterns[0].Panel("bottom").Marks.Select(mark => mark.From.X));
    }

    [Theory]
    [InlineData(HandleKind.FoldedStrap, true, 0)]
    [InlineData(HandleKind.Webbing, false, 0.375)]
    [InlineData(HandleKind.StrapAndWebbing, true, 0.375)]
    public void A_handle_of_9_inches_takes_10_of_webbing_with_half_an_inch_turned_under_at_each_end(
        HandleKind kind,
        bool strap,
        double yards
    )
    {
        // Sources.ChapeReplacement: webbing ends are turned under 1/2 in; 10 in is sold as 3/8 yd.
        Quote quote = Trade.Quote(Order(Boxed(18, 15, 2, HandSewn) with { Handle = Strap with { Kind = kind } }));

        Assert.Equal(strap, quote.Drafting.Pieces.Any(piece => piece.Part.ToString() == "handle"));
        Assert.Equal(
            (decimal)yards,
            quote.Materials.Where(material => material.Kind == MaterialKind.Webbing).Sum(material => (decimal)material.Quantity)
        );
        Assert.Equal(2, quote.Drafting.Patterns[0].Panel("front").Marks.Count(mark => mark.Kind == MarkKind.HandleEnd));
    }

    [Fact]
    public void A_patch_pocket_is_turned_under_3_8_inch_and_hemmed_at_its_mouth()
    {
        // Sources.PatchTurnUnder: 3/8 in; the double hem of 2 × 1/2 is common practice.
        CutPiece pocket = Piece(
            "pocket",
            Boxed(24, 18, 6, HandSewn),
            new TrimSpecification { Pocket = new PocketSpecification(Side.Right, In(8), In(5)) }
        );

        Assert.Equal((In(8.75m), In(6.375m)), (pocket.Width, pocket.Length));
    }

    [Fact]
    public void Straps_reach_from_seam_to_seam_with_an_allowance_at_each_end()
    {
        // Sources.Derived: 20 + 2 × 1/2, four layers of 1 in.
        CutPiece strap = Piece(
            "strap",
            Boxed(20, 18, 3, HandSewn),
            new TrimSpecification { Straps = new StrapSpecification(2, In(1), In(20), StrapMake.Folded) }
        );

        Assert.Equal((2, In(4), In(21)), (strap.Quantity, strap.Width, strap.Length));
    }

    [Fact]
    public void Straps_are_as_long_as_the_underside_is_wide_where_they_lie()
    {
        // Sources.Derived: a tee 28 in wide over ears 5 in deep is 22 in behind them: of 24 in of depth two straps lie at 8 and 16, and the
        // first of four at 4.8, across the ears. A bay's seat from 24 to 18 in over 18 in is 22 in wide a third of the way back.
        var tee = new TeeOutline(In(28), In(24), In(3), In(5));

        Assert.Equal(In(22), StrapLevels.Longest(tee, 2));
        Assert.Equal(In(28), StrapLevels.Longest(tee, 4));
        Assert.Equal(In(22), StrapLevels.Longest(new TrapezoidOutline(In(24), In(18), In(18), In(3)), 2));
        Assert.Equal(In(20), StrapLevels.Longest(new RectangleOutline(In(20), In(18)), 3));
    }

    [Fact]
    public void An_anti_slip_base_is_bought_by_the_area_of_the_cut_underside()
    {
        // Sources.Mathematics: 21 × 19 = 399 in² of 1 296 in a square yard: 0.3079, up to 0.31.
        Material base_ = Bought(
            Quoted(Boxed(20, 18, 3, HandSewn), new TrimSpecification { Base = BaseKind.AntiSlip }),
            MaterialKind.AntiSlip
        );

        Assert.Equal((0.31m, SaleUnit.SqYd), (base_.Quantity, base_.Unit));
    }

    [Fact]
    public void An_anti_slip_base_under_deep_tufts_is_as_large_as_the_face_that_it_is_pleated_with()
    {
        // Sources.Derived: cut like the bottom, 35 × 22 5/8 = 791.9 in², up to 0.62 sq yd and not 0.51 for 31 × 21.
        CushionSpecification cushion = Boxed(30, 20, 5, BackZipper);
        var trim = new TrimSpecification
        {
            Base = BaseKind.AntiSlip,
            Tufts = new TuftSpecification(2, 4, TuftGrid.Square, In(0.875m), false, In(2)),
        };
        CutPiece bottom = Drafting.Of(Order(cushion with { Trim = trim })).Pieces.Single(piece => piece.Part == PartName.Bottom);

        Assert.Equal((In(35), In(22.625m)), (bottom.Width, bottom.Length));
        Assert.Equal(0.62m, Bought(Quoted(cushion, trim), MaterialKind.AntiSlip).Quantity);
    }

    [Theory]
    [InlineData(Side.Left)]
    [InlineData(Side.Right)]
    public void No_join_of_a_boxing_lies_under_a_handle(Side side)
    {
        // Sources.Practice: 40 + 2 × 15 in of boxing on 60 in, joined near an end of it; a handle of 8 in is in the middle of that side.
        CushionSpecification cushion = Boxed(40, 18, 3, BackZipper, BoxingJoins.Back) with
        {
            Handle = new HandleSpecification(HandleKind.FoldedStrap, side, In(1), In(9), In(8)),
        };
        Drafting drafting = Drafting.Of(Order(cushion, Fabric with { Width = In(60) }));
        int[] ends = [.. drafting.Patterns[0].Panels.Select(panel => panel.Marks.Count(mark => mark.Purpose == MarkPurpose.SewHandleEnd))];

        Assert.True(drafting.Patterns[0].Panels.Count(panel => panel.Part.Kind == PartKind.Boxing) > 1);
        Assert.Equal([2], ends.Where(count => count > 0));
    }

    // Sources.Practice: 18 in of side, of which the zipper at the back takes 2 round the corner: the strip of the left side starts at the
    // back, where 2 in are gone, so its middle is at 7 of its 16; that of the right side ends at the back, so it is at 9.
    [Theory]
    [InlineData(Side.Left, 7)]
    [InlineData(Side.Right, 9)]
    [InlineData(Side.Front, 20)]
    public void A_handle_or_a_pocket_is_in_the_middle_of_its_side_where_a_zipper_runs_round_the_corner(Side side, double middle)
    {
        CushionSpecification cushion = Boxed(40, 18, 3, BackZipper with { Return = In(2) }) with
        {
            Handle = new HandleSpecification(HandleKind.FoldedStrap, side, In(1), In(9), In(8)),
            Trim = new TrimSpecification { Pocket = new PocketSpecification(side, In(6), In(2)) },
        };
        PanelMark[] marks = [.. Drafting.Of(Order(cushion)).Patterns[0].Panel(side.ToString().ToLowerInvariant()).Marks];

        Assert.Equal([In((decimal)middle - 4), In((decimal)middle + 4)], Across(MarkPurpose.SewHandleEnd));
        Assert.Equal([In((decimal)middle - 3), In((decimal)middle + 3)], Across(MarkPurpose.SewPocket));

        Length[] Across(MarkPurpose purpose) =>
            [
                .. marks
                    .Where(mark => mark.Purpose == purpose)
                    .SelectMany(mark => new[] { mark.From.X, mark.To!.Value.X })
                    .Distinct()
                    .Order(),
            ];
    }

    [Fact]
    public void Eyelets_of_a_joined_side_are_set_on_each_of_its_panels()
    {
        // Sources.Practice: 120 in of front on fabric of 54 in are three panels, and six eyelets are spread over all of them.
        CushionSpecification cushion = Boxed(120, 18, 3, HandSewn) with
        {
            Trim = new TrimSpecification
            {
                Vents = 6,
                VentSide = Side.Front,
                FaceJoins = FaceJoins.Allow,
            },
        };
        Step[] steps =
        [
            .. Trade.Quote(Order(cushion)).Steps.Where(one => one.Text.ToString().Contains("eyelet", StringComparison.Ordinal)),
        ];

        Assert.True(steps.Length > 1);
        Assert.Equal(steps.Length, steps.SelectMany(one => one.Pieces).Distinct().Count());
        Assert.Equal(
            6,
            steps.Sum(one =>
                int.Parse(one.Text.ToString().Split("Set ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)
            )
        );
    }

    [Fact]
    public void Vents_stand_evenly_along_the_middle_of_their_side()
    {
        Drafting cushion = Draft(Boxed(20, 18, 3, HandSewn), new TrimSpecification { Vents = 3, VentSide = Side.Left });
        PanelMark[] vents = [.. cushion.Patterns[0].Panel("left").Marks.Where(mark => mark.Kind == MarkKind.Vent)];

        Assert.Equal([In(4.5m), In(9), In(13.5m)], vents.Select(mark => mark.From.X));
        Assert.All(vents, mark => Assert.Equal(In(1.5m), mark.From.Y));
    }

    [Fact]
    public void Cord_is_as_long_as_the_loops_and_their_overlaps()
    {
        // Sources.Practice: 188 in is 5.22 yd, sold as 5 1/4.
        var welt = new WeltSpecification([EdgingPlace.Top, EdgingPlace.Bottom], In(0.15625m), WeltCut.Bias);
        Quote quote = Quoted(Boxed(24, 22, 4, HandSewn), new TrimSpecification { Edging = welt });

        Assert.Equal(5.25m, Bought(quote, MaterialKind.Cord).Quantity);
        Assert.Contains(
            "92 in round the top + 2 in to close",
            Bought(quote, MaterialKind.Cord).Because.ToString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Piping_does_not_change_the_size_of_a_face()
    {
        // Sources.Derived: its stitch line sits on the seam line.
        var welt = new WeltSpecification([EdgingPlace.Top, EdgingPlace.Bottom], In(0.25m), WeltCut.Bias);

        Assert.Equal(
            Piece("top", Boxed(24, 22, 4, HandSewn), TrimSpecification.None).Width,
            Piece("top", Boxed(24, 22, 4, HandSewn), new TrimSpecification { Edging = welt }).Width
        );
    }
}
