using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Tests.Materials;

public sealed class WrappingFacts
{
    private static readonly StockSpecification Roll = new()
    {
        Id = "batting",
        Kind = MaterialKind.Batting,
        Width = In(48),
        Sold = new UnitSale(SaleUnit.Yd, 0.25m, 0),
    };

    [Theory]
    [InlineData(2, 1321.51)] // 24 × √(20² + 4²) + 24 × 20 + 24 × 2 + 24 × 6 + 20 × (6 + 2)
    [InlineData(0, 1245.13)] // 24 × √(20² + 6²) + 24 × 20 + 24 × 6 + 20 × 6
    public void The_skin_of_a_wedge_is_its_slope_its_underside_its_ends_and_two_slanted_sides(int front, double inches)
    {
        // Sources.Mathematics.
        CushionSpecification wedge = Wrapped(24, 20, 6, WrapSides.WholeSkin, 1) with
        {
            Construction = Construction.Wedge,
            FrontThickness = In(front),
        };

        Assert.Equal((decimal)inches, decimal.Round(Wrapping.Area(Wrapping.Pieces(wedge, wedge.Fill!.Wrap!)) / 645.16m, 2));
    }

    [Fact]
    public void A_wrap_round_24_22_4_is_28_by_52()
    {
        // Sources.Derived: 2 (22 + 4) by 24 + 4; with the back bare 2 × 22 + 4.
        Assert.Equal((In(28), In(52), 1), Assert.Single(Wrapping.Pieces(In(24), In(22), In(4), WrapSides.FourSides)));
        Assert.Equal((In(28), In(48), 1), Assert.Single(Wrapping.Pieces(In(24), In(22), In(4), WrapSides.ThreeSides)));
    }

    [Theory]
    [InlineData(WrapSides.ThreeSides, 40.41649)]
    [InlineData(WrapSides.FourSides, 46.41649)]
    public void A_wrap_round_a_wedge_goes_down_its_slope(WrapSides sides, double length)
    {
        // Sources.Derived: √(19² + 4²) + 2 + 19 on 18 + 6, and 6 up the back.
        CushionSpecification wedge = Wrapped(18, 19, 6, sides, 1) with
        {
            Construction = Construction.Wedge,
            FrontThickness = In(2),
        };
        (Length Width, Length Length, int Count) piece = Assert.Single(Wrapping.Pieces(wedge, wedge.Fill!.Wrap!));

        Assert.Equal(In(24), piece.Width);
        Assert.Equal(length, (double)piece.Length.In(LengthUnit.Inch), 1e-3);
    }

    [Fact]
    public void The_skin_of_24_22_4_is_1424_square_inches() =>
        // Sources.Derived: 2 (24 × 22 + 24 × 4 + 22 × 4).
        Assert.Equal(1424, Wrapping.Area(Wrapping.Pieces(In(24), In(22), In(4), WrapSides.WholeSkin)) / 645.16m);

    [Theory]
    [InlineData(WrapSides.FourSides, 1, 1, 1.5)]
    [InlineData(WrapSides.FourSides, 2, 1, 3)]
    [InlineData(WrapSides.FourSides, 1, 2, 3)]
    [InlineData(WrapSides.ThreeSides, 1, 1, 1)]
    [InlineData(WrapSides.ThreeSides, 2, 1, 1.75)]
    public void A_wrap_is_cut_off_the_roll_across_or_along(WrapSides sides, int cushions, int layers, double yards)
    {
        // Sources.Derived: 28 × 52 lies along a roll of 48 in, one after the other, 52 or 104 in; 28 × 48 lies across it, 28 or 56 in.
        Material batting = Batting(Wrapped(24, 22, 4, sides, layers) with { Quantity = cushions }, Roll);

        Assert.Equal(((decimal)yards, SaleUnit.Yd), (batting.Quantity, batting.Unit));
    }

    [Fact]
    public void A_wrap_wider_than_the_roll_both_ways_is_butted_from_strips()
    {
        // Sources.Derived: 52 × 100 off 48 in: two strips of 26 by 100, one beside the other in turn.
        Material batting = Batting(Wrapped(48, 48, 4, WrapSides.ThreeSides, 1), Roll);

        Assert.Contains("off a roll 48 in wide", batting.Because.ToString(), StringComparison.Ordinal);
        Assert.True(batting.Quantity * 36 * 48 >= 52 * 100, "Less batting than the wrap has area.");
    }

    [Fact]
    public void Wraps_wider_than_the_roll_are_turned_where_that_takes_less()
    {
        // Sources.Derived: each 28 × 48 off 27 in: two strips of 14 by 48 leave 13 in beside them, 4 × 48 = 192 in; two of 24 by 28 take
        // 4 × 28 = 112 in, 3 1/8 yd by quarters 3 1/4.
        Material batting = Batting(Wrapped(24, 22, 4, WrapSides.ThreeSides, 1) with { Quantity = 2 }, Roll with { Width = In(27) });

        Assert.Contains("112 in off a roll 27 in wide", batting.Because.ToString(), StringComparison.Ordinal);
        Assert.Equal(3.25m, batting.Quantity);
    }

    [Fact]
    public void Without_a_roll_batting_is_bought_by_its_area()
    {
        // Sources.Derived: 28 × 52 in is 1.1235 yd².
        Material batting = Batting(Wrapped(24, 22, 4, WrapSides.FourSides, 1));

        Assert.Equal((1.13m, SaleUnit.SqYd), (batting.Quantity, batting.Unit));
    }

    [Fact]
    public void A_bolster_is_wrapped_once_round()
    {
        CushionSpecification bolster = Wrapped(8, 8, 0, WrapSides.FourSides, 1) with
        {
            Construction = Construction.Bolster,
            Outline = new CircleOutline(In(8)),
            Length = In(24),
        };
        (Length width, Length length, int count) = Assert.Single(Wrapping.Pieces(bolster, bolster.Fill!.Wrap!));

        // Sources.Mathematics: 8 π.
        Assert.Equal(25.13274, (double)width.In(LengthUnit.Inch), 1e-4);
        Assert.Equal((In(24), 1), (length, count));
    }

    [Fact]
    public void The_skin_of_a_disc_is_two_faces_and_a_strip_round()
    {
        // Sources.Mathematics: 20 π = 62.83 in round, and not the 80 in round a square.
        CushionSpecification disc = Wrapped(20, 20, 4, WrapSides.WholeSkin, 1) with
        {
            Outline = new CircleOutline(In(20)),
        };
        (Length width, Length length, int count)[] pieces = [.. Wrapping.Pieces(disc, disc.Fill!.Wrap!)];

        Assert.Equal((In(20), In(20), 2), pieces[0]);
        Assert.Equal(62.83185, (double)pieces[1].width.In(LengthUnit.Inch), 1e-4);
        Assert.Equal((In(4), 1, 2), (pieces[1].length, pieces[1].count, pieces.Length));
    }

    private static CushionSpecification Wrapped(decimal width, decimal depth, decimal thickness, WrapSides sides, int layers) =>
        Boxed(width, depth, thickness, HandSewn) with
        {
            Fill = new FillSpecification(FillKind.Foam, "foam", null, Length.Zero, 0.9m)
            {
                Wrap = new WrapSpecification("batting", sides, layers),
            },
        };

    private static Material Batting(CushionSpecification cushion, params StockSpecification[] stocks) =>
        Trade
            .Quote(Order(cushion, Fabric with { Width = In(118) }) with { Stocks = [.. stocks] })
            .Materials.Single(material => material.Kind == MaterialKind.Batting);
}
