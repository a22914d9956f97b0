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

    [Fact]
    public void A_hide_has_no_second_lot()
    {
        OffcutSpecification hide = new(In(40), In(40)) { Outline = [new(In(0), In(0)), new(In(40), In(0)), new(In(0), In(40))] };

        Assert.Null(Plan([KnifeEdge(18, 18, HandSewn)], hide));
    }

    private static SecondLot? Plan(ImmutableArray<CushionSpecification> cushions, params ImmutableArray<OffcutSpecification> onHand)
    {
        FabricSpecification fabric = Fabric with { Selvedge = Length.Zero, OnHand = onHand };
        Drafting drafting = Drafting.Of(Order(cushions[0], fabric) with { Cushions = cushions });
        return SecondLot.Of(fabric, drafting.Pieces, Effort.Quick, 12, CancellationToken.None);
    }
}
