using System.Collections.Immutable;
using CushionService.Engine.Fitting;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Fitting;

/// <summary>A short bolt, and what of an order is cut from another lot. Pillows of two faces of 19 by 19 in on fabric 54 wide: two lie
/// side by side. That what is seen of a cushion comes from one lot is common practice, no source.</summary>
public sealed class SecondLotFacts
{
    // 40 in hold two rows of two faces: 2 pillows. The rest, n − 2, takes 19 in of the new lot each; 19 in are sold as 5/8 yd, 38 as 1 1/8.
    [Theory]
    [InlineData(3, 2, 1, 0.625)]
    [InlineData(4, 2, 2, 1.125)]
    [InlineData(100, 2, 98, 51.75)]
    public void A_short_bolt_has_whole_cushions_and_so_has_the_second_lot(int quantity, int kept, int moved, double sold)
    {
        SecondLot lot = Plan([KnifeEdge(18, 18, HandSewn) with { Quantity = quantity }], new OffcutSpecification(In(54), In(40)))!;

        Assert.Equal([kept], lot.Kept.Select(count => count.Quantity));
        Assert.Equal([moved], lot.Moved.Select(count => count.Quantity));
        Assert.Equal([moved, moved], lot.Pieces.Select(piece => piece.Quantity));
        Assert.Equal((decimal)sold, lot.Bought.Yardage.SoldUnits);
    }

    // A face of 37 and one of 19 do not lie side by side. The wide cushion's two rows of 19 in leave 6 of 44: no face of the pillow.
    [Fact]
    public void A_cushion_is_not_divided_between_the_lots()
    {
        CushionSpecification wide = KnifeEdge(36, 18, HandSewn) with { Id = "wide" };
        SecondLot lot = Plan([wide, KnifeEdge(18, 18, HandSewn)], new OffcutSpecification(In(54), In(44)))!;

        Assert.Equal(["wide"], lot.Kept.Select(count => count.Cushion.Id));
        Assert.Equal(["seat"], lot.Moved.Select(count => count.Cushion.Id));
        Assert.Equal(["seat/top", "seat/bottom"], lot.Pieces.Select(piece => piece.Id));
    }

    [Fact]
    public void A_bolt_that_holds_no_cushion_is_left_and_the_second_lot_has_all()
    {
        SecondLot lot = Plan([KnifeEdge(18, 18, HandSewn)], new OffcutSpecification(In(54), In(10)))!;

        Assert.Empty(lot.Kept);
        Assert.Equal([1], lot.Moved.Select(count => count.Quantity));
        Assert.StartsWith("No cushion can be cut whole", lot.Because.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_short_bolts_of_two_lots_each_have_whole_cushions()
    {
        SecondLot lot = Plan([KnifeEdge(18, 18, HandSewn) with { Quantity = 5 }], new(In(54), In(20), "A"), new(In(54), In(39), "B"))!;

        Assert.Equal([3], lot.Kept.Select(count => count.Quantity));
        Assert.Equal([2], lot.Moved.Select(count => count.Quantity));
    }

    // Three pillows in a row take three rows of 19 in: 40 in hold two of them, and so none of the row; the pillow that lies by itself
    // is cut from them.
    [Fact]
    public void A_row_is_of_one_lot()
    {
        CushionSpecification[] row = [.. new[] { "left", "middle", "right" }.Select(id => KnifeEdge(18, 18, HandSewn) with { Id = id })];
        CushionSpecification alone = KnifeEdge(17, 17, HandSewn);
        SecondLot lot = PlanRows(
            [.. row, alone],
            [new RowSpecification("bench", [.. row.Select(seat => seat.Id)])],
            new OffcutSpecification(In(54), In(40))
        )!;

        Assert.Equal(["seat"], lot.Kept.Select(count => count.Cushion.Id));
        Assert.Equal(["left", "middle", "right"], lot.Moved.Select(count => count.Cushion.Id));
        Assert.Equal(1.625m, lot.Bought.Yardage.SoldUnits);
    }

    // 100 pillows of 200 faces: 40 in hold two, and what is missing is for 98, not for all of them.
    [Fact]
    public void Of_a_large_order_whole_cushions_are_laid_where_single_pieces_are_not_tried()
    {
        FabricSpecification fabric = Fabric with { OnHand = [new OffcutSpecification(In(54), In(40))] };
        OffcutFit fit = OffcutFit.Of(
            fabric,
            Drafting.Of(Order(KnifeEdge(18, 18, HandSewn) with { Quantity = 100 }, fabric)).Pieces,
            Effort.Quick,
            1,
            CancellationToken.None
        );
        OffcutFit filled = fit.Filled(Effort.Quick, 1, CancellationToken.None);

        Assert.Equal([100, 100], fit.Unplaced.Select(rest => rest.Copies));
        Assert.Equal([98, 98], filled.Unplaced.Select(rest => rest.Copies));
        Assert.Equal((fit.Verdict, 4), (filled.Verdict, filled.Layouts[0].Placements.Length));
    }

    [Fact]
    public void A_hide_has_no_second_lot()
    {
        OffcutSpecification hide = new(In(40), In(40)) { Outline = [new(In(0), In(0)), new(In(40), In(0)), new(In(0), In(40))] };

        Assert.Null(Plan([KnifeEdge(18, 18, HandSewn)], hide));
    }

    private static SecondLot? Plan(ImmutableArray<CushionSpecification> cushions, params ImmutableArray<OffcutSpecification> onHand) =>
        PlanRows(cushions, [], onHand);

    private static SecondLot? PlanRows(
        ImmutableArray<CushionSpecification> cushions,
        ImmutableArray<RowSpecification> rows,
        params ImmutableArray<OffcutSpecification> onHand
    )
    {
        FabricSpecification fabric = Fabric with { Selvedge = Length.Zero, OnHand = onHand };
        Drafting drafting = Drafting.Of(Order(cushions[0], fabric) with { Cushions = cushions });
        return SecondLot.Of(fabric, drafting.Pieces, rows, Effort.Quick, 12, CancellationToken.None);
    }
}
