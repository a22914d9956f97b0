using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Cutting;

/// <summary>How wide and how long a welt is cut, and the fabric that it takes.</summary>
public sealed class WeltFacts
{
    private static readonly Length Eighth = In(0.125m);

    [Theory]
    [InlineData(0.125, 1.393, 1.5, Sources.Mathematics)]
    [InlineData(0.15625, 1.491, 1.5, Sources.Practice)]
    [InlineData(0.1875, 1.589, 1.625, Sources.Mathematics)]
    [InlineData(0.21875, 1.687, 1.75, Sources.Mathematics)]
    [InlineData(0.25, 1.785, 1.875, Sources.Mathematics)]
    [InlineData(0.375, 2.178, 2.25, Sources.Mathematics)]
    [InlineData(0.5, 2.571, 2.625, Sources.Mathematics)]
    [InlineData(1, 4.142, 4.25, Sources.Mathematics)]
    public void A_strip_wraps_the_cord_and_bears_two_allowances(double cord, double exact, double cut, string source)
    {
        Length width = WeltSpecification.StripWidth(In((decimal)cord), In(0.5m));

        Assert.Equal(exact, (double)width.In(LengthUnit.Inch), 0.0006);
        Assert.Equal(In((decimal)cut), width.RoundUpTo(Eighth));
    }

    [Theory]
    [InlineData(5, 45.71)]
    [InlineData(6, 48.85)]
    public void Metric_strips_keep_a_metric_allowance(int cord, double exact) =>
        // Sources.Derived: π d + 2 × 15 mm.
        Assert.Equal(exact, (double)WeltSpecification.StripWidth(Mm(cord), Mm(15)).In(LengthUnit.Millimetre), 0.005);

    [Fact]
    public void The_shops_three_cords_and_two_allowances_are_short_by_0_14_of_a_cord()
    {
        // Sources.Derived: π − 3.
        Length cord = In(1),
            exact = WeltSpecification.StripWidth(cord, In(0.5m)),
            shorthand = 3 * cord + 2 * In(0.5m);

        Assert.Equal(0.1416, (double)(exact - shorthand).In(LengthUnit.Inch), 0.0001);
    }

    [Fact]
    public void A_1921_piping_of_1_1_4_inch_strips_holds_no_cord_at_half_inch_seams_but_a_flat_fold()
    {
        // Sources.NewDressmaker: flat piping strips 1 1/4 in wide; folded once, the fold and two 1/2 in allowances leave 1/8 in to show.
        Length strip = In(1.25m),
            shows = Length.FromNanometres((strip - 2 * In(0.5m)).Nanometres / 2);

        Assert.Equal(In(0.125m), shows);
        Assert.True(WeltSpecification.StripWidth(In(0.0625m), In(0.5m)) <= strip);
        Assert.True(WeltSpecification.StripWidth(In(0.125m), In(0.5m)) > strip);
    }

    [Fact]
    public void A_box_of_24_22_4_piped_at_both_edges_needs_188_inches()
    {
        // Sources.Practice: two seam lines of 92 in, 2 in each to close.
        CutPiece welt = Piece(Boxed(24, 22, 4, HandSewn), WeltCut.Crosswise);

        Assert.Equal(4, welt.Quantity);
        Assert.Equal(In(1.5m), welt.Length);
        Assert.Equal(In(6), welt.Quantity * welt.Length);
        Assert.True(welt.Welt!.Supplied >= In(188));
    }

    [Theory]
    [InlineData(188, 1.5, 8, 17.471, 192)]
    [InlineData(250, 2, 8, 23.127, 256)]
    public void A_continuous_square_gives_whole_turns(int need, double strip, int turns, double side, int yield)
    {
        // Sources.Derived: n = ⌈√(need / 2w)⌉, S = n w √2 + 2 × 1/4, yield 2 n² w. The area rule would buy √(w × need), too little.
        WeltSupply square = BiasSupply.Squares(In(need), In((decimal)strip), 1, In(0.25m), Length.FromNanometres(1));

        Assert.Equal((turns, In(yield)), (square.Strips, square.Supplied));
        Assert.Equal(side, (double)square.Width.In(LengthUnit.Inch), 0.001);
        Assert.True((double)square.Width.In(LengthUnit.Inch) > Math.Sqrt(need * strip));
    }

    [Theory]
    [InlineData(20, 2, 200, 7, 197.99)]
    [InlineData(36, 1.5, 864, 16, 814.59)]
    [InlineData(36, 2, 648, 12, 610.94)]
    public void Whole_turns_give_less_than_the_area_rule(int side, double strip, int area, int turns, double yield)
    {
        // Sources.Mathematics: area S²/w; turns ⌊S / (w √2)⌋ of S √2 each.
        Length spacing = BiasSupply.Diagonal(In((decimal)strip));
        long whole = In(side).Nanometres / spacing.Nanometres;

        Assert.Equal(area, side * side / strip);
        Assert.Equal(turns, whole);
        Assert.Equal(yield, whole * side * Math.Sqrt(2), 0.01);
    }

    [Fact]
    public void Straight_strips_of_950_inches_take_18_rows_or_27_inches()
    {
        // Sources.Derived: 950 × 1 1/2 / 54 = 26.389 in by area; joined square, 18 whole strips. Joined on the slant it takes 19.
        WeltSupply strips = StraightSupply.For(In(950), In(1.5m), In(54), false, Eighth);

        Assert.Equal(26.389, 950 * 1.5 / 54, 0.001);
        Assert.Equal(18, (int)Math.Ceiling(950 / 54.0));
        Assert.Equal(19, strips.Pieces);
        Assert.True(strips.Supplied >= In(950) && strips.Supplied <= In(950) + strips.Pieces * Eighth);
    }

    [Fact]
    public void Bias_strips_stand_root_two_widths_apart_along_the_thread()
    {
        // Sources.NewDressmaker: true bias lies at 45°. Sources.TeachersBias: the old rule adds a third, 5.7 % short.
        Length spacing = BiasSupply.Diagonal(In(1.5m)),
            taught = In(2);

        Assert.Equal(2.12132, (double)spacing.In(LengthUnit.Inch), 0.00001);
        Assert.Equal(0.057, 1 - (double)(taught.In(LengthUnit.Inch) / spacing.In(LengthUnit.Inch)), 0.0005);
    }

    // Yards of strip that a yard of fabric gives at most, by area. Sources.Derived: 36 × Fw / w / 36.
    [Theory]
    [InlineData(1, 36.0, 45.0, 48.0, 54.0, 60.0)]
    [InlineData(1.25, 28.8, 36.0, 38.4, 43.2, 48.0)]
    [InlineData(1.5, 24.0, 30.0, 32.0, 36.0, 40.0)]
    [InlineData(1.75, 20.6, 25.7, 27.4, 30.9, 34.3)]
    [InlineData(2, 18.0, 22.5, 24.0, 27.0, 30.0)]
    [InlineData(2.5, 14.4, 18.0, 19.2, 21.6, 24.0)]
    [InlineData(3, 12.0, 15.0, 16.0, 18.0, 20.0)]
    public void No_cutting_beats_the_area_and_the_engines_comes_near(double strip, params double[] yards)
    {
        int[] widths = [36, 45, 48, 54, 60];
        for (var i = 0; i < widths.Length; i++)
        {
            Assert.Equal(yards[i], widths[i] / strip, 0.051);
            WeltSupply bias = BiasSupply.For(In(36 * (decimal)(0.85 * yards[i])), In((decimal)strip), In(0.25m), In(widths[i]), Eighth);
            double given = bias.Supplied.Nanometres * In((decimal)strip).Nanometres / (double)bias.Fabric.SquareNanometres;
            Assert.InRange(given, 0.75, 1.0);
        }
    }

    [Theory]
    [InlineData(1.5, 29.0, 35.0, 39.0)]
    [InlineData(2, 21.6, 26.1, 29.1)]
    [InlineData(1.75, 24.1, 29.1, 32.4)]
    public void Strips_joined_on_the_slant_from_a_yard_of_fabric(double strip, params double[] yards)
    {
        // Sources.Derived: n = ⌊36 / w⌋ strips, n Fw − (n − 1) w.
        int[] widths = [45, 54, 60];
        for (var i = 0; i < widths.Length; i++)
        {
            var rows = (int)(36 / strip);
            double inches = (rows * widths[i]) - ((rows - 1) * strip);
            Assert.Equal(yards[i], inches / 36, 0.051);
            Assert.Equal(
                rows,
                StraightSupply
                    .For(In((decimal)(rows * (widths[i] - strip))), In((decimal)strip), In(widths[i]), false, Length.FromNanometres(1))
                    .Pieces
            );
        }
    }

    [Fact]
    public void A_square_that_fits_its_fabric_is_not_broken_up_into_many_small_ones()
    {
        // Sources.Practice: each further square is a join more. Ten squares of 6 7/8 in would save an eighth of a yard here.
        WeltSupply supply = BiasSupply.For(In(252), In(1.5m), In(0.25m), In(45), Eighth);

        Assert.InRange(supply.Pieces, 1, 2);
        Assert.True(supply.Supplied >= In(252));
    }

    // Sources.Derived, by hand: n squares give 2 n t² w less (n − 1) w in t turns, sides t w √2 and 1/2 in, up to 1/8 in; sold by 1/8 yd.
    [Theory]
    // 13 turns of 1 7/8 give 633 3/4: 35 in, 1 yd. Two of 24 3/8 do not lie side by side on 45: 48 3/4, 1 3/8 yd. Six of 13 7/8, three
    // across, would take 27 3/4, 7/8 yd, for five joins more.
    [InlineData(549.875, 1.875, 45, 1, 35, 36)]
    // 16 turns of 1 5/8 are 37 3/8, 1 1/8 yd; two of 25 7/8 would be 51 3/4.
    [InlineData(753.625, 1.625, 45, 1, 37.375, 40.5)]
    // One of 15 turns is 32 3/8, 1 yd; two of 11 turns, 23 7/8, lie side by side on 54: 3/4 yd.
    [InlineData(620, 1.5, 54, 2, 23.875, 27)]
    public void Squares_on_a_fabric_of_their_own_are_those_that_are_sold_shortest(
        double need,
        double strip,
        int usable,
        int squares,
        double side,
        double sold
    )
    {
        var sale = new SaleRule(SaleUnit.Yd, In(4.5m), Length.Zero);
        WeltSupply supply = BiasSupply.Alone(In((decimal)need), In((decimal)strip), In(0.25m), In(usable), Eighth, sale.Sell);

        Assert.Equal((WeltSupplyKind.ContinuousSquare, squares, In((decimal)side)), (supply.Kind, supply.Pieces, supply.Width));
        // What is laid out here lies in one row.
        Assert.Equal(In((decimal)sold), sale.Sell(supply.Length));
        Assert.True(supply.Supplied >= In((decimal)need));
    }

    [Fact]
    public void Much_welt_on_narrow_fabric_is_cut_in_several_squares_that_fit_it()
    {
        WeltSupply supply = BiasSupply.For(In(3000), In(1.5m), In(0.25m), In(54), Eighth);

        Assert.Equal(WeltSupplyKind.ContinuousSquare, supply.Kind);
        Assert.InRange(supply.Pieces, 2, 8);
        Assert.True(supply.Width <= In(54) && supply.Supplied >= In(3000));
    }

    [Fact]
    public void Very_much_welt_on_very_narrow_fabric_is_cut_in_whole_strips()
    {
        WeltSupply supply = BiasSupply.For(In(4000), In(2), In(0.25m), In(6), Eighth);

        Assert.Equal(WeltSupplyKind.BiasStrips, supply.Kind);
        Assert.True(supply.Supplied >= In(4000));
    }

    private static CutPiece Piece(CushionSpecification cushion, WeltCut cut)
    {
        var welt = new WeltSpecification([EdgingPlace.Top, EdgingPlace.Bottom], In(0.15625m), cut);
        return Drafting
            .Of(Order(cushion with { Trim = new TrimSpecification { Edging = welt } }))
            .Pieces.Single(piece => piece.Part.ToString() == "welt");
    }
}
