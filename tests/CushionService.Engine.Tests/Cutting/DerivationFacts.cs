using CushionService.Engine.Cutting;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Cutting;

public sealed class DerivationFacts
{
    [Theory]
    [InlineData("top", "24 in + 2 × 1/2 in seam by 22 in + 2 × 1/2 in seam")]
    [InlineData("zipper-upper", "30 in + 2 × 1/2 in seam by 2 in + 3/4 in zipper turn-under + 1/2 in seam")]
    [InlineData("zipper-lower", "30 in + 2 × 1/2 in seam by 2 in + 1/2 in seam + 3/4 in zipper turn-under")]
    [InlineData("boxing-1", "53 in + 2 × 1/2 in seam by 4 in + 2 × 1/2 in seam")]
    public void A_cut_size_is_told_in_one_line(string part, string line) =>
        Assert.Equal(line, Derivation.Of(Piece(Boxed(24, 22, 4, BackZipper, BoxingJoins.Back), part)).ToString());

    [Fact]
    public void A_hem_counts_each_of_its_folds() =>
        Assert.Equal(
            "22 in + 2 × 1/2 in seam by 2 1/2 in + 2 × 1/2 in hem + 1/2 in seam",
            Derivation.Of(Piece(Boxed(22, 20, 4, HookAndLoop(0.5m, 1)), "closure-upper")).ToString()
        );

    [Fact]
    public void Rounding_to_the_cutting_step_is_told() =>
        Assert.Equal(
            "about 18 in + 2 × 1/2 in seam, up to 19 1/8 in by 20 in + 2 × 1/2 in seam",
            Derivation.Of(Piece(KnifeEdge(18.01m, 20, HandSewn), "top")).ToString()
        );

    [Theory]
    [InlineData(18.125, 0.25, "18 1/8 in + 2 × 1/2 in seam, down to 19 in")]
    [InlineData(18.1875, 0.25, "18 3/16 in + 2 × 1/2 in seam, up to 19 1/4 in")]
    [InlineData(18.125, 0.125, "18 1/8 in + 2 × 1/2 in seam")]
    [InlineData(18.0625, 0.125, "18 1/16 in + 2 × 1/2 in seam, down to 19 in")]
    public void A_face_cut_to_the_nearest_step_says_which_way_it_was_rounded(double side, double step, string half)
    {
        // Sources.Mathematics: 19 1/8 to the nearest quarter is 19, halves go down.
        OrderSpecification order = Order(KnifeEdge((decimal)side, (decimal)side, HandSewn));
        order = order with { Workroom = order.Workroom with { CuttingStep = In((decimal)step), FaceRounding = FaceRounding.Nearest } };
        CutPiece face = Drafting.Of(order).Pieces[0];

        Assert.Equal($"{half} by {half}", Derivation.Of(face).ToString());
        Assert.Equal((face.Width, face.Length), (face.WidthTerms.Cut, face.LengthTerms.Cut));
    }

    [Theory]
    [InlineData(OutlineKind.Circle, "16 in + 2 × 1/2 in seam by 16 in + 2 × 1/2 in seam")]
    [InlineData(OutlineKind.Oval, "20 in + 2 × 1/2 in seam by 16 in + 2 × 1/2 in seam")]
    [InlineData(OutlineKind.DShape, "20 in + 2 × 1/2 in seam by 16 in + 2 × 1/2 in seam")]
    public void Terms_of_a_round_piece_add_up_to_its_size(OutlineKind outline, string because)
    {
        CutPiece top = Piece(
            Boxed(20, 16, 4, HandSewn) with
            {
                Outline = outline switch
                {
                    OutlineKind.Circle => new CircleOutline(In(16)),
                    OutlineKind.Oval => new OvalOutline(In(20), In(16)),
                    _ => new DShapeOutline(In(20), In(16)),
                },
            },
            "top"
        );

        Assert.Equal(because, Derivation.Of(top).ToString());
    }

    private static CutPiece Piece(CushionSpecification cushion, string part) =>
        Drafting.Of(Order(cushion)).Pieces.Single(piece => piece.Part.ToString() == part);
}
