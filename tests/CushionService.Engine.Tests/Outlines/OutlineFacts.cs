using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Tests.Outlines;

public sealed class OutlineFacts
{
    public static TheoryData<string, Outline, double, double, string> Shapes() =>
        new()
        {
            { "circle of 16", new CircleOutline(In(16)), 50.26548, Math.PI * 64, Sources.Mathematics },
            { "circle of 24", new CircleOutline(In(24)), 75.39822, Math.PI * 144, Sources.Mathematics },
            {
                "rounded rectangle of 24 by 22, radius 3",
                new RoundedRectangleOutline(In(24), In(22), In(3)),
                86.84956,
                520.27433,
                Sources.Mathematics
            },
            { "round-ended, 30 by 14", new RoundEndedOutline(In(30), In(14)), 75.98230, 377.93804, Sources.Mathematics },
            {
                "round-ended, 31 by 15",
                new RoundEndedOutline(In(31), In(15)),
                79.12389,
                16 * 15 + (Math.PI * 15 * 15 / 4),
                Sources.Mathematics
            },
            {
                "D of 20 by 4 and half a disc",
                new DShapeOutline(In(20), In(14)),
                20 + 8 + (Math.PI * 10),
                80 + (Math.PI * 50),
                Sources.Mathematics
            },
            { "half round of 20", new HalfRoundOutline(In(20)), 20 + (Math.PI * 10), Math.PI * 50, Sources.Mathematics },
            { "hexagon of side 10", new RegularPolygonOutline(6, In(10)), 60, 259.80762, Sources.Mathematics },
            { "bay of 60, 40 and 18", new TrapezoidOutline(In(60), In(40), In(18), In(10)), 141.18252, 900, Sources.Mathematics },
            { "tee within 26 by 22", new TeeOutline(In(26), In(22), In(3), In(6)), 96, (26 * 22) - (2 * 3 * 16), Sources.Mathematics },
            {
                "ell of 60 by 60, arms 20 deep",
                new EllOutline(In(60), In(60), In(40), In(40), Engine.Specifications.Outlines.Side.Right),
                240,
                2000,
                Sources.Mathematics
            },
            { "U of 60 by 40, notch 20 by 15", new UOutline(In(60), In(40), In(20), In(15)), 230, 2100, Sources.Mathematics },
        };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Perimeter_and_area(string shape, Outline outline, double perimeter, double area, string source)
    {
        Assert.True(Math.Abs(perimeter - (double)outline.Perimeter.In(LengthUnit.Inch)) < 1e-5, $"{shape} ({source})");
        Assert.True(Math.Abs(area - outline.Area.In(LengthUnit.Inch)) < 1e-4, $"{shape} ({source})");
    }

    [Fact]
    public void An_ellipse_of_24_by_16_agrees_with_Ramanujan_to_a_hundredth_of_an_inch()
    {
        // Sources.Mathematics: the outline is of arcs, 63.46175 and 301.59289 are the ellipse's.
        var oval = new OvalOutline(In(24), In(16));

        Assert.Equal(63.46175, (double)oval.Perimeter.In(LengthUnit.Inch), 0.01);
        Assert.Equal(301.59289, oval.Area.In(LengthUnit.Inch), 0.1);
    }

    [Fact]
    public void A_hexagon_of_side_10_is_17_32051_across_its_flats() =>
        Assert.Equal(17.32051, (double)new RegularPolygonOutline(6, In(10)).Depth.In(LengthUnit.Inch), 1e-5);

    [Fact]
    public void The_slant_of_a_bay_of_60_40_and_18_is_20_59126() =>
        Assert.Equal(20.59126, (double)new TrapezoidOutline(In(60), In(40), In(18), In(10)).Sides[1].Length.In(LengthUnit.Inch), 1e-5);

    [Theory]
    [InlineData(16, 52.0)]
    [InlineData(24, 78.0)]
    public void Three_and_a_quarter_diameters_cover_a_round_border_and_one_join(int diameter, double ruleOfThumb)
    {
        // Sources.HistoricBorder, a rule of thumb to compare with: with half an inch of seam it covers πD and a join.
        double perimeter = (double)new CircleOutline(In(diameter)).Perimeter.In(LengthUnit.Inch);

        Assert.Equal(ruleOfThumb, 3.25 * diameter);
        Assert.InRange(ruleOfThumb - perimeter, 2 * 0.5, 3);
    }
}
