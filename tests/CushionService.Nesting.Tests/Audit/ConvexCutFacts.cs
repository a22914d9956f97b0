using CsCheck;
using CushionService.Nesting.Audit;
using CushionService.Nesting.Tests.Outlines;

namespace CushionService.Nesting.Tests.Audit;

/// <summary>The audit's own geometry: convex parts, and whether they meet, against NetTopologySuite.</summary>
public sealed class ConvexCutFacts
{
    private static readonly GridPoint[] Ell = Corners((0, 0), (20, 0), (20, 10), (10, 10), (10, 30), (0, 30));

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
        var square = Corners((0, 0), (10, 0), (10, 10), (0, 10));
        Assert.Equal(meets, Meets(Ell, square, x, y));
        Assert.Equal(meets, Meets(square, Ell, -x, -y));
    }

    [Fact]
    public void A_tongue_fits_a_slot_as_wide_as_itself_and_not_one_unit_further()
    {
        var comb = Corners((0, 0), (9, 0), (9, 6), (6, 6), (6, 3), (3, 3), (3, 6), (0, 6));
        var tongue = Corners((0, 0), (3, 0), (3, 6), (0, 6));
        Assert.False(Meets(comb, tongue, 3, 3));
        Assert.True(Meets(comb, tongue, 3, 2));
        Assert.True(Meets(comb, tongue, 4, 3));
    }

    [Fact]
    public void A_sliver_thinner_than_any_rounding_of_doubles_is_seen()
    {
        // Two triangles along a line of a kilometre in micrometres: a corner 10^-9 of a unit below it is seen, one on it is allowed.
        const long Far = 1_000_000_000;
        var lower = Corners((0, 0), (Far, 0), (Far, Far - 1));
        Assert.False(Meets(lower, Corners((0, 0), (Far, Far - 1), (0, Far)), 0, 0));
        Assert.True(Meets(lower, Corners((0, 0), (Far - 1, Far - 2), (0, Far)), 0, 0));
    }

    [Fact]
    public void Random_outlines_are_cut_into_convex_parts_of_the_same_area() =>
        Shapes.GenPiece.Sample(
            piece => Assert.All(ConvexCut.Of([.. piece.Outline]), part => Assert.True(part.Meets(part, 0, 0))),
            seed: "0000000000001",
            iter: 2_000
        );

    [Fact]
    public void An_outline_that_crosses_itself_is_refused() =>
        Assert.Throws<LayoutAuditException>(() => ConvexCut.Of(Corners((0, 0), (10, 0), (10, 10), (5, -5), (0, 10))));

    [Fact]
    public void NetTopologySuite_agrees_on_random_outlines() =>
        Gen.Select(Shapes.GenPiece, Shapes.GenPiece, Gen.Int[-30, 60], Gen.Int[-30, 60])
            .Sample(
                (one, other, x, y) =>
                {
                    // Corners are whole, so what two interiors share has an area well above the rounding of doubles.
                    GridPoint[] moved = [.. other.Outline.Select(corner => new GridPoint(corner.X + x, corner.Y + y))];
                    var shared = Shapes.ToPolygon([.. one.Outline]).Intersection(Shapes.ToPolygon(moved)).Area;
                    Assert.Equal(shared > 1e-9, Meets([.. one.Outline], [.. other.Outline], x, y));
                },
                seed: "0000000000001",
                iter: 5_000
            );

    private static bool Meets(GridPoint[] one, GridPoint[] other, long dx, long dy) =>
        ConvexCut.Of(one).Any(part => ConvexCut.Of(other).Any(theirs => part.Meets(theirs, dx, dy)));

    private static GridPoint[] Corners(params (long X, long Y)[] corners) =>
        [.. corners.Select(corner => new GridPoint(corner.X, corner.Y))];
}
