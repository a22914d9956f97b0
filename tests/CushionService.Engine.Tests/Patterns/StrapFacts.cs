using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>Where straps and ties are caught on outlines that are no rectangles (common practice, no source).</summary>
public sealed class StrapFacts
{
    private static readonly StrapSpecification Two = new(2, In(1), In(24), StrapMake.Folded);

    [Theory]
    // A rectangle is parted in thirds.
    [InlineData("rectangle", "0 6, 18 6, 0 12, 18 12", Sources.Practice)]
    // A hexagon with sides of 12 in is 20.785 deep: at a third of it, 6.928, its slanted sides are 4 in short of their corners.
    [InlineData("hexagon", "2 6.928, 22 6.928, 2 13.856, 22 13.856", Sources.Mathematics)]
    // 24 in front and 16 behind, 18 deep: at 6 and at 12 each side has come in by 4/3 and 8/3.
    [InlineData("trapezoid", "1.333 6, 22.667 6, 2.667 12, 21.333 12", Sources.Mathematics)]
    // The missing corner is 20 × 14 of 40 × 30, at the left of the top and so at the right of the underside.
    [InlineData("ell", "0 10, 40 10, 0 20, 20 20", Sources.Derived)]
    // A tee 24 × 20 whose ears are 3 wide and 6 deep has its body there.
    [InlineData("tee", "3 6.667, 21 6.667, 3 13.333, 21 13.333", Sources.Derived)]
    public void Straps_lie_level_from_the_left_edge_to_the_right(string outline, string ends, string source)
    {
        Assert.Equal(ends, Marks(outline, new TrimSpecification { Straps = Two }, MarkPurpose.CatchStrap));
        Assert.NotEmpty(source);
    }

    [Theory]
    // Not on the step, which is longer and faces backwards: on the edge of 16 in, an inch from its ends.
    [InlineData("ell", "40 15, 40 1", Sources.Practice)]
    [InlineData("tee", "3 19, 3 7", Sources.Practice)]
    public void Ties_at_the_left_are_on_an_edge_that_faces_left(string outline, string ends, string source)
    {
        var ties = new TieSpecification(2, Side.Left, In(12), In(0.5m), StrapMake.Folded);
        string caught = Marks(outline, new TrimSpecification { Ties = ties }, MarkPurpose.CatchTies);

        Assert.Equal(ends.Split(", ").Order(), caught.Split(", ").Order());
        Assert.NotEmpty(source);
    }

    [Theory]
    // 40 in over the whole and 20 behind the missing corner, and 1/2 in at each end.
    [InlineData("ell", "strap-1 4 × 41; strap-2 4 × 21", true)]
    // As long as each other, they need no number.
    [InlineData("hexagon", "strap 4 × 21", false)]
    public void Each_strap_is_as_long_as_the_underside_is_wide_where_it_lies(string outline, string cut, bool numbered)
    {
        CushionSpecification pad = KnifeEdge(1, 1, HandSewn) with
        {
            Outline = Outline(outline),
            Trim = new TrimSpecification { Straps = Two with { Length = null } },
        };

        Assert.EndsWith(cut, CutList(Order(pad)), StringComparison.Ordinal);
        Assert.Equal(
            numbered,
            Quote(Order(pad))
                .Steps.Single(step => step.Text.ToString().Contains("baste both ends", StringComparison.Ordinal))
                .Text.ToString()
                .Contains("in the order of their numbers from the front", StringComparison.Ordinal)
        );
        // A length of the order's own is that of all.
        Assert.Contains(
            "strap 4 × 45",
            CutList(Order(pad with { Trim = new TrimSpecification { Straps = Two with { Length = In(44) } } })),
            StringComparison.Ordinal
        );
    }

    private static string Marks(string outline, TrimSpecification trim, MarkPurpose purpose)
    {
        CushionSpecification pad = KnifeEdge(1, 1, HandSewn) with { Outline = Outline(outline), Trim = trim };
        Panel bottom = Drafting.Of(Order(pad)).Patterns[0][PartName.Bottom];

        return string.Join(", ", bottom.Marks.Where(mark => mark.Purpose == purpose).Select(mark => Written(mark.From)));
    }

    private static Outline Outline(string kind) =>
        kind switch
        {
            "hexagon" => new RegularPolygonOutline(6, In(12)),
            "trapezoid" => new TrapezoidOutline(In(24), In(16), In(18), In(4)),
            "ell" => new EllOutline(In(40), In(30), In(20), In(14), Side.Left),
            "tee" => new TeeOutline(In(24), In(20), In(3), In(6)),
            _ => new RectangleOutline(In(18), In(18)),
        };

    private static string Written(Point point) => $"{Number(point.X)} {Number(point.Y)}";

    private static string Number(Length length) => decimal.Round(length.In(LengthUnit.Inch), 3).ToString("0.###");
}
