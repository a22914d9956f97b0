using CsCheck;
using CushionService.Nesting.Outlines.Bounding;
using CushionService.Nesting.Outlines.NoFit;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Outlines;

/// <summary>Rectangles within outlines, which bound them.</summary>
public sealed class InnerBandFacts
{
    [Fact]
    public void A_tee_is_the_sum_of_its_bands()
    {
        var tee = Shapes.Piece((30, 0), (60, 0), (60, 60), (90, 60), (90, 90), (0, 90), (0, 60), (30, 60));
        var set = InnerBands.Of(new StripProblem { Width = 100, Pieces = [tee] })!;
        Assert.Equal([(30, 60), (90, 30)], Sizes(set).Order());
    }

    [Fact]
    public void A_convex_outline_holds_one_band_as_long_as_itself()
    {
        var wedge = Shapes.Piece((0, 0), (100, 0), (80, 50), (10, 50));
        var set = InnerBands.Of(new StripProblem { Width = 100, Pieces = [wedge] })!;
        Assert.Equal([(70, 50)], Sizes(set));
    }

    [Fact]
    public void Bands_never_have_more_area_than_their_outline() =>
        Shapes.GenPiece.Sample(
            piece =>
            {
                var single = piece with { Quantity = 1, Rotations = Rotations.None };
                if (InnerBands.Of(new StripProblem { Width = 1_000, Pieces = [single] }) is { } set)
                {
                    Assert.True(2 * set.Area <= (long)OutlineShape.Of(single, 0).DoubleArea);
                    Assert.All(Sizes(set), size => Assert.True(size.Across <= single.Width && size.Along <= single.Length));
                }
            },
            seed: "0000000000001",
            iter: 2_000
        );

    // Arms as wide as the strip, and stems of more than half of it: nothing lies beside anything, so three tees need 3 × (30 + 60) along.
    // Their area alone needs 3 × (90 × 30 + 50 × 60) / 90 = 190.
    [Fact]
    public void Bands_prove_a_length_that_area_does_not()
    {
        var tee = Shapes.Piece((20, 0), (70, 0), (70, 60), (90, 60), (90, 90), (0, 90), (0, 60), (20, 60)) with { Quantity = 3 };
        var layout = Nester.Nest(
            new StripProblem
            {
                Width = 90,
                Pieces = [tee],
                Sale = new SaleLadder(0, 90, 1, 1),
            },
            Effort.Quick
        );
        Assert.True(layout.ProvenMinimal);
        Assert.Equal(270, layout.Length);
    }

    [Fact]
    public void No_layout_is_shorter_than_the_bound() =>
        Gen.Select(Gen.Int[60, 120], Shapes.GenPiece.Array[1, 4])
            .Sample(
                (width, pieces) =>
                {
                    // What is proven at a little effort holds for what is found at more.
                    var problem = new StripProblem { Width = width, Pieces = [.. pieces] };
                    Assert.True(Nester.Nest(problem, Effort.Quick).LowerBound <= Nester.Nest(problem, Effort.Standard).Length);
                },
                seed: "0000000000001",
                iter: 12
            );

    private static IEnumerable<(long Across, long Along)> Sizes(RectangleSet set) =>
        Enumerable.Range(0, set.Copies).Select(copy => (set.Across[set.KindOf[copy]], set.Along[set.KindOf[copy]]));
}
