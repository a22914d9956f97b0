using CushionService.Engine.Geometry;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>A print that runs on along a row of seats, and up over their backs.</summary>
public sealed class RowPrintFacts
{
    private static readonly RepeatSpecification Repeat = new(In(12), In(9), DropKind.Straight);

    [Fact]
    public void The_motif_of_the_row_is_one_point_for_all_seats()
    {
        // Sources.Mathematics: seats of 20, 26 and 20 in have the row's middle 33 in from its left end: 33, 13 and −13 in from theirs.
        Drafting drafting = Drafting.Of(Banquette(RowPrint.Continuous));

        Assert.Equal([In(33), In(13), In(-13)], Tops(drafting).Select(top => top.Match!.Value.X));
        // The fronts are in one line: half of the first seat's 18 in from each.
        Assert.All(Tops(drafting), top => Assert.Equal(In(9), top.Match!.Value.Y));
        Assert.Empty(drafting.Warnings.Where(warning => warning.Code != "motif-unknown"));
    }

    [Fact]
    public void Flanged_cushions_touch_with_their_flanges()
    {
        // Sources.Mathematics: two of 20 in with flanges of 1 1/2 in lie 23 in apart: 11 1/2 in either way from the row's middle.
        CushionSpecification one = Flanged("one"),
            two = Flanged("two");
        OrderSpecification order = Order(one) with
        {
            Cushions = [one, two],
            Fabrics = [Fabric with { Repeat = Repeat }],
            Rows = [new RowSpecification("row", ["one", "two"], RowPrint.Continuous)],
        };

        Assert.Equal(
            [new Point(In(11.5m), default), new Point(In(-11.5m), default)],
            order.Cushions.Select(each => RowPrinting.Shift(order, each))
        );

        static CushionSpecification Flanged(string id) =>
            KnifeEdge(20, 20, HandSewn) with
            {
                Id = id,
                Construction = Construction.Flanged,
                Flange = new FlangeSpecification(FlangeLayers.Single, In(1.5m), Length.Zero),
            };
    }

    [Fact]
    public void The_same_print_is_in_the_middle_of_every_seat() =>
        Assert.Equal([In(10), In(13), In(10)], Tops(Drafting.Of(Banquette(RowPrint.Same))).Select(top => top.Match!.Value.X));

    [Fact]
    public void Seats_cut_as_laid_make_one_width_of_fabric()
    {
        // Laid where their motifs are, the left edges of two neighbours are a seat's width apart, but for whole repeats.
        Drafting drafting = Drafting.Of(Banquette(RowPrint.Continuous));
        Length[] lefts = [.. Tops(drafting).Select(top => Modulo(-top.Match!.Value.X))];

        Assert.Equal(Modulo(In(20)), Modulo(lefts[1] - lefts[0]));
        Assert.Equal(Modulo(In(26)), Modulo(lefts[2] - lefts[1]));

        static Length Modulo(Length length) =>
            Length.FromNanometres(((length.Nanometres % In(9).Nanometres) + In(9).Nanometres) % In(9).Nanometres);
    }

    [Fact]
    public void The_front_of_the_boxing_carries_on_what_the_seat_has()
    {
        // Over the front edge the motif is as far above the strip as it is behind the edge: 9 in, and as far along as on the top.
        Panel front = Drafting.Of(Banquette(RowPrint.Continuous)).Patterns[1][PartName.Side(EdgeName.Front)];

        Assert.Equal(new Point(In(13), In(3 + 9)), front.Match);
    }

    [Fact]
    public void Backs_follow_their_seats()
    {
        // Two backs of 33 in behind the three seats: the row's middle is 33 in from the left and 18 − 9 in below the backs' lower edge.
        OrderSpecification seats = Banquette(RowPrint.Continuous);
        OrderSpecification order = seats with
        {
            Cushions = [.. seats.Cushions, Back("d"), Back("e")],
            Rows = [.. seats.Rows, new RowSpecification("backs", ["d", "e"], RowPrint.Continuous, "seats")],
        };

        Assert.Equal(
            [new Point(In(33), In(-9)), new Point(In(0), In(-9))],
            Tops(Drafting.Of(order)).Skip(3).Select(top => top.Match!.Value)
        );
    }

    [Fact]
    public void A_row_that_is_laid_is_matched_and_passes_its_audit()
    {
        Quote quote = Quote(Banquette(RowPrint.Continuous));

        Assert.All(
            quote.Yardages.SelectMany(yardage => yardage.Layout.Placements).Where(placed => placed.Piece.Panel?.Part == PartName.Top),
            placed => Assert.True(placed.IsMatched)
        );
    }

    private static CushionSpecification Back(string id) => Boxed(33, 16, 3, HandSewn) with { Id = id };

    private static OrderSpecification Banquette(RowPrint print) =>
        Order(Boxed(20, 18, 3, HandSewn), Fabric with { Repeat = Repeat }) with
        {
            Cushions =
            [
                Boxed(20, 18, 3, HandSewn) with
                {
                    Id = "a",
                },
                Boxed(26, 18, 3, HandSewn) with
                {
                    Id = "b",
                },
                Boxed(20, 18, 3, HandSewn) with
                {
                    Id = "c",
                },
            ],
            Rows = [new RowSpecification("seats", ["a", "b", "c"], print)],
        };

    private static IEnumerable<Panel> Tops(Drafting drafting) => drafting.Patterns.Select(pattern => pattern[PartName.Top]);
}
