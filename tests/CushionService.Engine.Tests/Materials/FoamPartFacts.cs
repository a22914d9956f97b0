using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Layouts;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Materials;

/// <summary>Foam that is larger than its sheet is divided where that takes the fewest sheets, the fewest parts and least glue.</summary>
public sealed class FoamPartFacts
{
    private static readonly Length Kerf = In(0.25m);

    private static readonly StockSpecification Sheet = new()
    {
        Id = "foam",
        Kind = MaterialKind.Foam,
        Width = In(24),
        Length = In(72),
        Thickness = In(4),
    };

    public static TheoryData<Outline, string, double, int> Shapes() =>
        new()
        {
            // Both lines through the inside corner leave two parts that end to end are 70 1/4 long; the joint is 20 or 18.
            { new EllOutline(In(50), In(40), In(30), In(22), Side.Right), "2 parts: 20 in × 40 in and 30 in × 18 in", 18, 1 },
            { new EllOutline(In(50), In(40), In(30), In(22), Side.Left), "2 parts: 20 in × 40 in and 30 in × 18 in", 18, 1 },
            // 2 000 in² do not come from a sheet of 1 728.
            { new EllOutline(In(60), In(60), In(40), In(40), Side.Right), "2 parts: 20 in × 60 in and 40 in × 20 in", 20, 2 },
            // Behind the ears the foam is 46 in wide.
            { new TeeOutline(In(66), In(26), In(10), In(6)), "2 parts: 46 in × 20 in and 66 in × 6 in", 46, 2 },
            // Split at its inside corners, two legs of 15 × 30 and a bar of 30 × 10, it takes two sheets: 60 1/2 and 10 in beside 30.
            // Three strips of 20 do with one: the middle one is 10 in deep, 30 1/4 + 30 1/4 + 10 are 70 1/2, and either joint is 10 in.
            { new UOutline(In(60), In(30), In(30), In(20)), "3 parts: 2 × 20 in × 30 in and 20 in × 10 in", 20, 1 },
            { new CircleOutline(In(30)), "2 parts of 15 in × 30 in", 30, 1 },
        };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void A_shape_larger_than_its_sheet_is_split_where_that_costs_least(Outline outline, string parts, double joint, int sheets)
    {
        // Sources.Practice: an ell is split at its inside corner. The figures were worked by hand; sheets of 24 × 72, 1/4 in of kerf.
        FoamBlock block = Block(outline);
        FoamParts divided = block.PartsOn(Sheet, Kerf);

        Assert.Equal($"glued from {parts}", divided.Facts().ToString());
        Assert.Equal(In((decimal)joint), divided.JointLength);
        Assert.Equal(sheets, FoamSheets.Of(Sheet, [block], Kerf, SideSearch.Alone(Effort.Quick, CancellationToken.None)).Count);
    }

    [Theory]
    [InlineData(60, 40, true)] // 2 000 in² need two sheets, however they are divided
    [InlineData(66, 0, false)] // a tee of 1 316 in² might come from one
    public void That_fewer_sheets_cannot_hold_them_is_said_only_where_the_area_proves_it(int width, int notch, bool proven)
    {
        Outline outline =
            notch > 0
                ? new EllOutline(In(width), In(width), In(notch), In(notch), Side.Right)
                : new TeeOutline(In(width), In(26), In(10), In(6));
        string because = Bought(outline, MaterialKind.Foam).Because.ToString();

        Assert.Contains("2 sheets", because, StringComparison.Ordinal);
        Assert.Equal(proven, because.Contains("fewer cannot hold them", StringComparison.Ordinal));
    }

    [Fact]
    public void Adhesive_goes_as_far_as_the_foam_is_joined()
    {
        // Sources.Derived: an ell of 60 × 60 with arms of 20 is joined over 20 in, 4 in high, both faces: 160 in².
        string because = Bought(new EllOutline(In(60), In(60), In(40), In(40), Side.Right), MaterialKind.Adhesive).Because.ToString();

        Assert.Contains("both faces of 1 × 20 in of joint, 4 in high, 160 in²", because, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shape_of_many_corners_is_divided_into_parts_that_fit()
    {
        // Sources.Mathematics: parts that only touch cover as much as the whole.
        Point[] back =
        [
            .. Enumerable
                .Range(0, 24)
                .SelectMany(i =>
                    new[] { new Point(In(120 - (5 * i)), In(60 - (i % 2 * 20))), new Point(In(115 - (5 * i)), In(60 - (i % 2 * 20))) }
                ),
        ];
        ImmutableArray<Point> comb = [new Point(In(0), In(0)), new Point(In(120), In(0)), .. back];
        foreach (var (sizes, joint) in new FoamDivision(In(24), In(72)).Of(comb))
        {
            Assert.All(
                sizes,
                size => Assert.True(Length.Min(size.Width, size.Depth) <= In(24) && Length.Max(size.Width, size.Depth) <= In(72))
            );
            Assert.True(joint > Length.Zero);
        }
    }

    [Fact]
    public void A_line_parts_a_shape_into_what_it_leaves_on_both_sides()
    {
        // Sources.Mathematics: at the floor of its notch a U falls into its bar and two legs of 10 in.
        ImmutableArray<Point> u = [.. new UOutline(In(40), In(30), In(20), In(18)).Sides.Select(side => side.Path[0].From)];
        PolygonCut floor = PolygonCut.Level(u, In(12)),
            below = PolygonCut.Level(u, In(10)),
            through = PolygonCut.Plumb(u, In(20)),
            beside = PolygonCut.Level(u, In(30));

        Assert.Equal((3, In(20)), (floor.Parts.Length, floor.Joint));
        Assert.Equal((2, In(40)), (below.Parts.Length, below.Joint));
        Assert.Equal((2, In(12)), (through.Parts.Length, through.Joint));
        Assert.Equal((1, Length.Zero), (beside.Parts.Length, beside.Joint));
        foreach (PolygonCut cut in new[] { floor, below, through, beside })
        {
            Int128 parts = cut.Parts.Aggregate((Int128)0, (sum, part) => sum + Polygon.Area(part).SquareNanometres);
            Assert.Equal(Polygon.Area(u).SquareNanometres, parts);
        }
    }

    private static FoamBlock Block(Outline outline) => FoamBlock.Of(Seat(outline), paired: true).Single();

    private static Material Bought(Outline outline, MaterialKind kind) =>
        Quote(Order(Seat(outline), Fabric with { Width = In(118) }) with { Stocks = [Sheet] })
            .Materials.Single(material => material.Kind == kind);

    private static CushionSpecification Seat(Outline outline) =>
        Boxed(60, 20, 4, HandSewn, BoxingJoins.Back) with
        {
            Outline = outline,
            Fill = new FillSpecification(FillKind.Foam, "foam", null, Length.Zero, 0.9m),
        };
}
