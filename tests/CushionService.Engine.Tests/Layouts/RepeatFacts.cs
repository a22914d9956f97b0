using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Layouts;

public sealed class RepeatFacts
{
    [Fact]
    public void Cuts_of_25_at_a_repeat_of_13_1_2_start_27_apart()
    {
        // Sources.Derived: three in a column are 2 × 27 + 25 = 79 in; the layout starts where the first does.
        Yardage yardage = OneTop(39, 24, 3, new RepeatSpecification(In(13.5m), null, DropKind.Straight)).Yardages[0];
        Length[] starts = [.. yardage.Layout.Placements.Select(laid => laid.Y).Order()];

        Assert.Equal([In(27), In(27)], [starts[1] - starts[0], starts[2] - starts[1]]);
        Assert.Equal(In(79), yardage.Layout.Length);
        // With a repeat to start, 92 1/2 in: 2 5/8 yd.
        Assert.Equal(2.625m, yardage.SoldUnits);
    }

    [Fact]
    public void The_repeat_shrinks_with_the_fabric_before_pieces_are_matched_to_it()
    {
        // Sources.Practice: a 20 in repeat is 18 in after a wash of 10 %, so cuts of 19 start 36 apart: 3 × 36 + 19 = 127 in laid,
        // 127 / 0.9 + 20 = 161.1 in bought, 4 1/2 yd.
        FabricSpecification fabric = Fabric with
        {
            LengthShrinkage = Percent(10),
            Repeat = new RepeatSpecification(In(20), In(20), DropKind.Straight),
        };
        Yardage yardage = Quote(Order(KnifeEdge(18, 18, HandSewn) with { Quantity = 2 }, fabric)).Yardages[0];

        Assert.Equal(In(127), yardage.Layout.Length);
        Assert.Equal(161.1m, decimal.Round(FabricSale.Needed(fabric, yardage.Layout.Length, yardage.Layout.Start).In(LengthUnit.Inch), 1));
        Assert.Equal(4.5m, yardage.SoldUnits);
        Assert.StartsWith("127 in laid out ÷ (1 − 10 % shrinkage) + 20 in", yardage.Because.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(5, 16)]
    [InlineData(10, 16)]
    public void A_repeat_across_shrinks_with_the_width(int percent, int repeat)
    {
        // Sources.Mathematics: two motifs across are R (1 − p) apart, and the usable width is Fw (1 − p).
        FabricSpecification fabric = Fabric with
        {
            WidthShrinkage = Percent(percent),
            Repeat = new RepeatSpecification(In(12), In(repeat), DropKind.Straight) { MotifX = In(27) },
        };
        FabricLayout layout = Quote(Order(KnifeEdge(11, 11, HandSewn) with { Quantity = 4 }, fabric)).Yardages[0].Layout;
        Length[] starts = [.. layout.Placements.Select(laid => laid.X).Distinct().Order()];

        Assert.Equal(3, starts.Length);
        Assert.All(starts, start => Assert.Equal(0, (start - starts[0]).Nanometres % (In(repeat).Nanometres * (100 - percent) / 100)));
    }

    [Theory]
    [InlineData(DropKind.Straight)]
    [InlineData(DropKind.Half)]
    public void A_motif_lies_in_the_middle_of_every_face(DropKind drop)
    {
        // Sources.Derived; Sources.HalfDrop for the columns.
        var repeat = new RepeatSpecification(In(12), In(9), drop);
        FabricLayout layout = OneTop(14, 14, 5, repeat).Yardages[0].Layout;

        Assert.All(
            layout.Placements,
            laid =>
            {
                Length fromCentre = laid.X + In(7.5m) - layout.MotifX!.Value,
                    along = laid.Y + In(7.5m) - layout.MotifStart;
                long column = fromCentre.Nanometres / repeat.Width!.Value.Nanometres;

                Assert.Equal(0, fromCentre.Nanometres % repeat.Width.Value.Nanometres);
                Length phase = drop == DropKind.Half && column % 2 != 0 ? In(6) : Length.Zero;
                Assert.Equal(0, (along - phase).Nanometres % In(12).Nanometres);
            }
        );
    }

    [Fact]
    public void The_front_boxing_carries_the_face_s_pattern_over_the_edge()
    {
        // The strip's seam line lies half a depth below the face's centre: both at the same phase of the repeat, across and along.
        var repeat = new RepeatSpecification(In(12), In(9), DropKind.Straight);
        FabricLayout layout = Quote(Order(Boxed(14, 14, 3, HandSewn), Fabric with { Repeat = repeat })).Yardages[0].Layout;
        LaidPiece face = layout.Placements.First(laid => laid.Piece.Part.ToString() == "top"),
            front = layout.Placements.Single(laid => laid.Piece.Part.ToString() == "front");
        Length faceSeam = face.Y + In(0.5m),
            frontSeam = front.Y + In(0.5m) + In(3);

        Assert.Equal(0, (face.X - front.X).Nanometres % repeat.Width!.Value.Nanometres);
        Assert.Equal(0, (faceSeam - frontSeam).Nanometres % In(12).Nanometres);
    }

    [Fact]
    public void A_matched_piece_is_never_turned() =>
        Assert.All(
            OneTop(14, 14, 5, new RepeatSpecification(In(12), In(9), DropKind.Straight)).Yardages[0].Layout.Placements,
            laid => Assert.Equal(0, laid.Turn)
        );

    [Theory]
    // Motifs are 60 in apart: of 25 in a face and its front need 12 1/2 in to either side. 27 in leaves that, 5 in does not.
    [InlineData(27, "")]
    [InlineData(5, "seat/bottom seat/boxing-1 seat/top")]
    public void What_no_motif_can_lie_right_for_is_laid_unmatched_with_a_warning(int motif, string unmatched)
    {
        FabricSpecification fabric = Fabric with
        {
            Repeat = new RepeatSpecification(In(12), In(60), DropKind.Straight) { MotifX = In(motif) },
        };
        OrderSpecification order = Order(Boxed(24, 22, 4, BackZipper, BoxingJoins.Back), fabric);
        Violation[] warnings = [.. Drafting.Of(order).Warnings];

        Assert.All(warnings, warning => Assert.Equal("not-matched", warning.Code));
        Assert.Equal(unmatched, string.Join(' ', warnings.Select(warning => warning.Detail.ToString().Split(' ')[1]).Order()));
        Assert.Contains(Quote(order).Yardages[0].Layout.Placements, laid => laid.Piece.Part.ToString() == "boxing-1");
    }

    [Fact]
    public void A_railroaded_face_is_matched_as_it_lies()
    {
        // Sources.Practice: railroading turns the whole cushion, its motifs too.
        FabricSpecification fabric = Fabric with
        {
            Grain = Grain.Railroaded,
            Repeat = new RepeatSpecification(In(12), null, DropKind.Straight),
        };
        OrderSpecification order = Order(KnifeEdge(60, 20, HandSewn), fabric);

        Assert.Empty(Drafting.Of(order).Warnings);
        Assert.All(Quote(order).Yardages[0].Layout.Placements, laid => Assert.Equal((90, In(21)), (laid.Turn, laid.Width)));
    }

    [Fact]
    public void Faces_of_different_widths_are_centred_on_motifs_of_one_half_drop()
    {
        // Sources.HalfDrop: a face two columns wider starts a column earlier, where the motif is half a repeat lower.
        var repeat = new RepeatSpecification(In(12), In(9), DropKind.Half);
        OrderSpecification order = Order(KnifeEdge(10, 10, HandSewn), Fabric with { Repeat = repeat });
        order = order with { Cushions = [order.Cushions[0], KnifeEdge(28, 10, HandSewn) with { Id = "wide" }] };

        FabricLayout layout = Quote(order).Yardages[0].Layout;
        Assert.All(
            layout.Placements,
            laid =>
            {
                long column = (laid.X + laid.Width.HalfUp() - layout.MotifX!.Value).Nanometres / In(9).Nanometres;
                Length along = laid.Y + laid.Length.HalfUp() - layout.MotifStart - (column % 2 == 0 ? Length.Zero : In(6));

                Assert.Equal(0, along.Nanometres % In(12).Nanometres);
            }
        );
    }

    // The underside is of another fabric, so that only the tops are matched.
    private static Quote OneTop(decimal width, decimal depth, int quantity, RepeatSpecification repeat)
    {
        CushionSpecification cushion = KnifeEdge(width, depth, HandSewn) with
        {
            Quantity = quantity,
            Fabrics = new FabricRoles("main", "lining", "main", "main"),
        };
        return Quote(Order(cushion) with { Fabrics = [Fabric with { Repeat = repeat }, Fabric with { Id = "lining" }] });
    }
}
