using CushionService.Engine.Cutting;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>Envelopes either way, zippers round three sides, two handles, channels across.</summary>
public sealed class OpeningFacts
{
    [Theory]
    [InlineData(false, "bottom-front 25 × 11 1/2; bottom-back 25 × 11 1/2")] // (16 + 4) / 2 = 10, 1/2 seam, 2 × 1/2 hem
    [InlineData(true, "bottom-left 15 1/2 × 17; bottom-right 15 1/2 × 17")] // (24 + 4) / 2 = 14, likewise
    public void Flaps_of_an_envelope_hang_from_either_pair_of_sides(bool sideways, string flaps)
    {
        // Sources.Practice.
        CushionSpecification cushion = KnifeEdge(24, 16, Envelope(sideways));

        Assert.EndsWith(flaps, Trade.CutList(Order(cushion)), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_flaps_sideways_make_the_underside_again()
    {
        // Sources.Derived: 2 × 14 less the overlap of 4 is 24.
        Pattern pattern = Pattern(KnifeEdge(24, 16, Envelope(true)));

        Assert.Equal(In(24), pattern.Panel("bottom-left").Width + pattern.Panel("bottom-right").Width - In(4));
        Assert.Equal(In(16), Fastenings.Run(pattern));
    }

    [Theory]
    [InlineData(Side.Back, 69)] // 22 + 24 + 22 and 2 × 1/2 caught in the joins
    [InlineData(Side.Left, 71)] // 24 + 22 + 24
    public void A_zipper_round_three_sides_is_as_long_as_the_three(Side side, int inches)
    {
        // Sources.Practice.
        CushionSpecification cushion = Boxed(24, 22, 4, new ZipperClosure(side, Length.Zero, In(0.75m)) { ThreeSides = true }) with
        {
            Joins = BoxingJoins.Corners,
        };
        Pattern pattern = Pattern(cushion);

        Assert.Equal(In(inches), Closing.ZipperChain(cushion, pattern));
        Assert.Single(pattern.Panels, panel => panel.Part.Kind is PartKind.Side);
    }

    [Fact]
    public void A_zipper_round_three_sides_needs_a_fourth()
    {
        Assert.True(ClosureLine.RunsRound(new RectangleOutline(In(24), In(22)), Side.Left));
        Assert.True(ClosureLine.RunsRound(new TeeOutline(In(26), In(24), In(4), In(6)), Side.Back));
        Assert.False(ClosureLine.RunsRound(new CircleOutline(In(18)), Side.Back));
        Assert.False(ClosureLine.RunsRound(new HalfRoundOutline(In(18)), Side.Back));
    }

    [Fact]
    public void Two_handles_are_cut_sewn_and_counted_twice()
    {
        // Sources.Practice: straps of 4 × 1 1/4 by 10 1/2 + 2 × 1/2; on sides of 22 in, ends 9 3/4 apart, so 6 1/8 in from the ends.
        CushionSpecification one =
                Boxed(24, 22, 4, HandSewn) with
                {
                    Joins = BoxingJoins.Corners,
                    Handle = Strap with { Side = Side.Left },
                },
            two = one with { Handle = one.Handle with { Second = Side.Right } };
        Drafting drafting = Drafting.Of(Order(two));

        Assert.Equal(2, drafting.Pieces.Single(piece => piece.Part.Kind == PartKind.Handle).Quantity);
        foreach (string side in (string[])["left", "right"])
        {
            Assert.Equal(
                [In(6.125m), In(15.875m)],
                drafting.Patterns[0].Panel(side).Marks.Where(mark => mark.Kind == MarkKind.HandleEnd).Select(mark => mark.From.X)
            );
        }

        Length once = Threading.Stitching(one, Pattern(one)) - Threading.Stitching(one with { Handle = null }, Pattern(one));
        Assert.Equal(
            2 * once,
            Threading.Stitching(two, drafting.Patterns[0]) - Threading.Stitching(one with { Handle = null }, Pattern(one))
        );
    }

    [Fact]
    public void Webbing_is_bought_for_both_handles()
    {
        // Sources.Practice: 2 × (10 1/2 + 2 × 1/2) = 23 in, 0.64 yd.
        CushionSpecification cushion = Boxed(24, 22, 4, HandSewn) with
        {
            Joins = BoxingJoins.Corners,
            Handle = Strap with { Kind = HandleKind.Webbing, Second = Side.Left },
        };

        Assert.Equal(0.75m, Trade.Quote(Order(cushion)).Materials.Single(material => material.Kind == MaterialKind.Webbing).Quantity);
    }

    [Theory]
    [InlineData(Side.Left, "left", 5.125, 1.5)] // half of 20 − 9 3/4; half of 3
    [InlineData(Side.Right, "right", 5.125, 1.5)]
    [InlineData(Side.Front, "main", 7.125, 21.5)] // half of 24 − 9 3/4; underside of 20 and half the front
    public void A_handle_of_a_waterfall_lies_in_the_middle_of_its_side(Side side, string part, double start, double middle)
    {
        // Sources.Derived.
        CushionSpecification cushion = Boxed(24, 20, 3, BackZipper) with
        {
            Construction = Construction.Waterfall,
            Front = FrontShape.Square,
            Handle = Strap with { Side = side },
        };
        PanelMark mark = Pattern(cushion).Panel(part).Marks.First(mark => mark.Kind == MarkKind.HandleEnd);

        Assert.Equal(In((decimal)start), mark.From.X);
        Assert.Equal(In((decimal)middle), mark.From.Y + In(0.625m));
    }

    [Theory]
    [InlineData(ChannelDirection.Lengthwise, 26, 23)] // 4 × 6.25 in of arc over 6 in, by 22 + 2 × 1/2
    [InlineData(ChannelDirection.Across, 25, 24.125)] // 24 + 2 × 1/2, by 4 × 5.77 in over 5 1/2 in
    public void Crowned_channels_take_fabric_up_across_themselves(ChannelDirection direction, double width, double length)
    {
        // Sources.Mathematics: c = 6, k = 3/4: R = 6.375, arc 6.2472; c = 5.5: R = 5.4167, arc 5.7686; 4 of each and two seams.
        CushionSpecification cushion = Boxed(24, 22, 4, HandSewn) with
        {
            Channels = new ChannelSpecification(4, In(0.75m), Percent(2)) { Direction = direction },
        };
        Drafting drafting = Drafting.Of(Order(cushion));
        CutPiece top = drafting.Pieces.Single(piece => piece.Part.Kind == PartKind.Top);

        Assert.Equal((In((decimal)width), In((decimal)length)), (top.Width, top.Length));
        Assert.All(
            drafting.Patterns[0].Panel("top").Marks.Where(mark => mark.Purpose == MarkPurpose.StitchChannel),
            mark => Assert.Equal(direction == ChannelDirection.Across, mark.From.Y == mark.To!.Value.Y)
        );
    }

    private static EnvelopeClosure Envelope(bool sideways) => new(Side.Bottom, In(0.5m), In(4)) { Sideways = sideways };

    private static Pattern Pattern(CushionSpecification cushion) => Drafting.Of(Order(cushion)).Patterns[0];
}
