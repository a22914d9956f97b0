using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>The figures of a proof are lengths and areas that a caller can check.</summary>
public sealed class LayoutProofFacts
{
    [Fact]
    public void Area_over_width_is_the_length()
    {
        // Sources.Mathematics: four pieces of 27 × 10 cover 1080 in², and 54 in across they take 20.
        LayoutProof proof = Proof(Order(Fabric, Piece("a", 4, 27, 10, Rotations.None)));

        Assert.Equal((ProofKind.Area, In(20), In(54)), (proof.Kind, proof.Length, proof.Width));
        Assert.Equal(1080, proof.Area!.Value.In(LengthUnit.Inch), 1e-9);
        Assert.Equal("The pieces cover 1080 in², which fills 54 in of usable width to 20 in.", proof.Because.ToString());
    }

    [Fact]
    public void One_long_piece_is_a_proof_of_its_own()
    {
        LayoutProof proof = Proof(Order(Fabric, Piece("a", 1, 10, 60, Rotations.None), Piece("b", 1, 10, 10, Rotations.None)));

        Assert.Equal((ProofKind.LongestPiece, In(60)), (proof.Kind, proof.Length));
        Assert.Null(proof.Area);
        Assert.Equal("One piece alone takes 60 in.", proof.Because.ToString());
        Assert.Equal("One piece alone takes 152.4 cm.", new MessageWriter(Language.English, LengthUnit.Centimetre).Text(proof.Because));
    }

    [Fact]
    public void Pieces_that_cannot_lie_side_by_side_are_proven_by_their_sizes()
    {
        // Sources.Derived: two pieces of 30 in do not lie side by side on 54 in, so that they take 28 in, more than the 27 of 3/4 yd; their
        // area would ask for 15 5/9.
        LayoutProof proof = Proof(Order(Fabric, Piece("a", 2, 30, 14, Rotations.None)));

        Assert.True(proof.Length > In(27) && proof.Length <= In(28), proof.Length.ToString());
        Assert.NotEqual(ProofKind.Area, proof.Kind);
        Assert.Contains(LengthText.Format(proof.Length, LengthUnit.Inch), proof.Because.ToString(), StringComparison.Ordinal);
    }

    private static LayoutProof Proof(OrderSpecification order) => LayoutProof.Of(Quote(order).Yardages[0].Layout)!;
}
