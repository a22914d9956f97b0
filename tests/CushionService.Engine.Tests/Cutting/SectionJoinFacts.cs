using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Cutting;

/// <summary>Where strips turn a corner a join is part of the turn (common practice, no source).</summary>
public sealed class SectionJoinFacts
{
    [Theory]
    // 30 + 20 + 30 in from the left, or the right; 20 + 30 + 20 from the front: none longer than 53.
    [InlineData(Side.Left, "30 50")]
    [InlineData(Side.Right, "30 50")]
    [InlineData(Side.Front, "20 50")]
    [InlineData(Side.Back, "20 50")]
    public void A_zipper_round_three_sides_is_joined_at_a_corner_whatever_its_side(Side side, string pieces) =>
        Assert.Equal(pieces, Pieces(Box(new RectangleOutline(In(30), In(20)), side), "zipper-upper"));

    [Fact]
    public void Three_sides_of_an_ell_are_joined_at_two_corners() =>
        // Round the left of 40 × 36 with a notch of 20 × 16 there: 20, 16, 20, 20 and 40 in, parted most evenly at 36 and 76 in.
        Assert.Equal("36 40 40", Pieces(Box(new EllOutline(In(40), In(36), In(20), In(16), Side.Left), Side.Left), "zipper-upper"));

    [Fact]
    public void The_front_of_an_ell_is_joined_under_the_seam_of_its_face()
    {
        // 60 × 60 with arms of 20 in: the top is 20 × 60 and 40 × 20, and its seam runs on down the front, 20 in from its left end.
        CushionSpecification ell = Boxed(1, 1, 4, BackZipper) with
        {
            Outline = new EllOutline(In(60), In(60), In(40), In(40), Side.Right),
            Trim = new TrimSpecification { FaceJoins = FaceJoins.Allow },
        };

        Assert.Equal("20 40", Pieces(ell, "top"));
        Assert.Equal("20 40", Pieces(ell, "front"));
    }

    [Fact]
    public void No_patch_lies_beside_a_corner_of_a_strip_round_a_u()
    {
        // Round a U of 50 × 30 with a notch of 20 × 15 the strip runs 12 (a side of the notch less a return), 15, 30, 50, 30, 15, 12 in.
        // Beside the front of 50 it takes 57 in at each side: two pieces, parted at the corner that leaves the longer one shortest.
        CushionSpecification u = Boxed(1, 1, 4, BackZipper, BoxingJoins.Back) with
        {
            Outline = new UOutline(In(50), In(30), In(20), In(15)),
        };
        string[] pieces = Pieces(u, "boxing").Split(' ');

        Assert.Equal("27 30 50 30 27", string.Join(' ', pieces));
    }

    private static string Pieces(CushionSpecification cushion, string part, int width = 54) =>
        string.Join(
            ' ',
            Drafting
                .Of(Order(cushion, Fabric with { Width = In(width) }))
                .Pieces.Where(piece => piece.Part.ToString().StartsWith(part, StringComparison.Ordinal))
                .Select(piece => LengthText.FormatNumber(piece.Panel!.Width, LengthUnit.Inch))
        );

    private static CushionSpecification Box(Outline outline, Side side) =>
        Boxed(1, 1, 4, new ZipperClosure(side, Length.Zero, In(0.75m)) { ThreeSides = true }, BoxingJoins.Back) with
        {
            Outline = outline,
        };
}
