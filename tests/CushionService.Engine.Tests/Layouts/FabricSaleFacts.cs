using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Tests.Layouts;

public sealed class FabricSaleFacts
{
    [Theory]
    [InlineData(40, 5, "42.10526", Sources.Mathematics)]
    [InlineData(100, 10, "111.11111", Sources.Mathematics)]
    [InlineData(79, 3, "81.44330", Sources.Mathematics)]
    [InlineData(40, 0, "40.00000", Sources.Mathematics)]
    public void Fabric_that_shrinks_is_bought_longer_by_division_not_by_addition(int layout, int percent, string needed, string source) =>
        Assert.Equal(
            decimal.Parse(needed),
            decimal.Round(
                FabricSale.Needed(Fabric with { LengthShrinkage = Percent(percent) }, In(layout), Length.Zero).In(LengthUnit.Inch),
                5
            )
        );

    [Theory]
    [InlineData(79, 0, 13.5, 0, "92.5", 2.625, Sources.Derived)]
    [InlineData(57, 3, 0, 0, "58.76289", 1.75, Sources.Practice)]
    [InlineData(57, 3, 13.5, 2, "74.26289", 2.125, Sources.Practice)]
    [InlineData(19, 0, 0, 0, "19", 0.625, Sources.Derived)]
    public void Allowances_follow_in_order_and_are_rounded_up_once(
        int layout,
        int shrinkage,
        double repeat,
        int squaring,
        string needed,
        double yards,
        string source
    )
    {
        FabricSpecification fabric = Fabric with { LengthShrinkage = Percent(shrinkage), Squaring = In(squaring) };

        Assert.Equal(
            decimal.Parse(needed),
            decimal.Round(FabricSale.Needed(fabric, In(layout), In((decimal)repeat)).In(LengthUnit.Inch), 5)
        );
        Assert.Equal((decimal)yards, FabricSale.Sold(fabric, In(layout), In((decimal)repeat)).In(LengthUnit.Yard));
    }

    [Fact]
    public void Rounding_each_part_by_itself_would_buy_more()
    {
        // Sources.Practice: 37 in with 3 % shrinkage and 2 in of squaring is 40.14 in, 1 1/8 yd; part by part it would be 9 + 1 eighths.
        FabricSpecification fabric = Fabric with
        {
            LengthShrinkage = Percent(3),
            Squaring = In(2),
        };

        Assert.Equal(9, FabricSale.Sold(fabric, In(37), Length.Zero).Nanometres / In(4.5m).Nanometres);
    }

    [Fact]
    public void The_line_tells_every_allowance() =>
        Assert.Equal(
            "19 in laid out ÷ (1 − 3 % shrinkage) + 13 1/2 in to start the repeat "
                + "+ 1 in to square the ends = about 34 1/16 in, up to the next 1/8 yd: 1 yd, enough wherever the first motif is",
            new Yardage(
                Quote(
                    Order(
                        KnifeEdge(18, 18, HandSewn),
                        Fabric with
                        {
                            LengthShrinkage = Percent(3),
                            Repeat = new RepeatSpecification(In(13.5m), null, DropKind.Straight),
                            Squaring = In(1),
                        }
                    )
                )
                    .Yardages[0]
                    .Layout
            ).Because.ToString()
        );

    [Fact]
    public void The_line_of_plain_fabric_is_short() =>
        Assert.Equal(
            "19 in laid out, up to the next 1/8 yd: 5/8 yd",
            Quote(Order(KnifeEdge(18, 18, HandSewn))).Yardages[0].Because.ToString()
        );

    [Fact]
    public void The_line_tells_when_the_least_that_is_sold_decides() =>
        Assert.EndsWith(
            "up to the next 1/8 yd and the least that is sold: 1/2 yd",
            Quote(Order(Fabric with { Sold = new SaleRule(SaleUnit.Yd, In(4.5m), In(18)) }, Piece("patch", 1, 6, 6)))
                .Yardages[0]
                .Because.ToString(),
            StringComparison.Ordinal
        );
}
