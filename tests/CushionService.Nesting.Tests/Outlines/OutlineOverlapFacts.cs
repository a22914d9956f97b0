using CsCheck;
using CushionService.Nesting.Outlines.NoFit;

namespace CushionService.Nesting.Tests.Outlines;

public sealed class OutlineOverlapFacts
{
    private static readonly GridPoint[] Ell = Corners((0, 0), (20, 0), (20, 10), (10, 10), (10, 30), (0, 30));
    private static readonly GridPoint[] Kite = Corners((0, 7), (5, 0), (10, 7), (5, 20));

    [Theory]
    [InlineData(20, 0, false, "side along side")]
    [InlineData(19, 0, true, "one unit into the side")]
    [InlineData(10, 10, false, "fits the corner of the ell")]
    [InlineData(9, 10, true, "one unit into the upright")]
    [InlineData(10, 9, true, "one unit into the foot")]
    [InlineData(-10, 30, false, "corner on corner")]
    [InlineData(-9, 29, true, "corner over corner")]
    [InlineData(0, 0, true, "inside, on three edges")]
    [InlineData(0, 20, true, "inside, on the upper end")]
    public void A_square_touches_an_ell_but_may_not_enter_it(long x, long y, bool meets, string _)
    {
        var square = Corners((x, y), (x + 10, y), (x + 10, y + 10), (x, y + 10));
        Assert.Equal(meets, new OutlineOverlap().InteriorsMeet(Ell, square));
        Assert.Equal(meets, new OutlineOverlap().InteriorsMeet(square, Ell));
    }

    [Fact]
    public void An_outline_inside_another_or_equal_to_it_is_refused()
    {
        Assert.True(new OutlineOverlap().InteriorsMeet(Ell, Corners((2, 2), (4, 2), (4, 4))));
        Assert.True(new OutlineOverlap().InteriorsMeet(Corners((2, 2), (4, 2), (4, 4)), Ell));
        Assert.True(new OutlineOverlap().InteriorsMeet(Kite, Kite));
    }

    [Fact]
    public void A_sliver_thinner_than_any_rounding_of_doubles_is_refused()
    {
        // Two triangles over a kilometre in micrometres; the second's corner is 10^-9 of a unit below the first's long edge.
        const long Far = 1_000_000_000;
        var lower = Corners((0, 0), (Far, 0), (Far, Far - 1));
        Assert.False(new OutlineOverlap().InteriorsMeet(lower, Corners((0, 0), (Far, Far - 1), (0, Far))));
        Assert.True(new OutlineOverlap().InteriorsMeet(lower, Corners((1, 1), (Far, Far), (0, Far), (Far - 1, Far - 2))));
        Assert.False(new OutlineOverlap().InteriorsMeet(lower, Corners((1, 1), (Far, Far), (0, Far))));
    }

    [Fact]
    public void Touching_corners_between_collinear_edges_are_allowed()
    {
        // A comb's tooth in a gap exactly as wide.
        var comb = Corners((0, 0), (9, 0), (9, 6), (6, 6), (6, 3), (3, 3), (3, 6), (0, 6));
        Assert.False(new OutlineOverlap().InteriorsMeet(comb, Corners((3, 3), (6, 3), (6, 9), (3, 9))));
        Assert.True(new OutlineOverlap().InteriorsMeet(comb, Corners((3, 2), (6, 2), (6, 9), (3, 9))));
    }

    [Fact]
    public void NetTopologySuite_agrees_on_random_outlines() =>
        Gen.Select(Shapes.GenPiece, Shapes.GenPiece, Gen.Int[-30, 60], Gen.Int[-30, 60])
            .Sample(
                (one, other, x, y) =>
                {
                    GridPoint[] first = [.. one.Outline],
                        second = [.. other.Outline.Select(corner => new GridPoint(corner.X + x, corner.Y + y))];
                    // Corners are whole, so what two interiors share has an area well above the rounding of doubles.
                    var shared = Shapes.ToPolygon(first).Intersection(Shapes.ToPolygon(second)).Area;
                    Assert.Equal(shared > 1e-9, new OutlineOverlap().InteriorsMeet(first, second));
                },
                seed: "0000000000001",
                iter: 5_000
            );

    private static GridPoint[] Corners(params (long X, long Y)[] corners) =>
        [.. corners.Select(corner => new GridPoint(corner.X, corner.Y))];
}
