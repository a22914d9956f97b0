using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Layouts;

public sealed class WorkedLayoutFacts
{
    // A box of 24 × 22 × 4 in with returns of 3 in, its boxing in two equal pieces.
    private static readonly LoosePieceSpecification[] Box =
    [
        Piece("face", 2, 25, 23),
        Piece("zipper-half", 2, 31, 3.25m),
        Piece("boxing", 2, 32, 5),
    ];

    [Fact]
    public void Two_faces_of_19_lie_side_by_side_and_take_five_eighths_of_a_yard()
    {
        // Sources.Derived: 19 in is 0.52778 yd.
        Yardage yardage = Quote(Order(KnifeEdge(18, 18, HandSewn))).Yardages[0];

        Assert.Equal(In(19), yardage.Layout.Length);
        Assert.Equal(0.625m, yardage.SoldUnits);
        Assert.True(yardage.Layout.ProvenMinimal);
    }

    [Theory]
    [InlineData(Rotations.None)]
    [InlineData(Rotations.HalfTurn)]
    [InlineData(Rotations.QuarterTurns)]
    public void A_box_in_six_pieces_takes_at_most_the_hand_layout_and_at_least_its_area(Rotations turns)
    {
        // Sources.Derived: area 1671.5 in² on 54 in is at least 30.9537 in; by hand 23 + 5 + 5 + 3 1/4 + 3 1/4 = 39 1/2 in.
        Yardage yardage = Quote(
            Order(Fabric, [.. Box.Select(piece => piece with { Rotations = turns })]) with
            {
                Effort = Effort.Standard,
            }
        ).Yardages[0];
        decimal bound = yardage.Layout.LowerBound.In(LengthUnit.Inch);

        Assert.Equal(1671.5, yardage.Layout.Covered.In(LengthUnit.Inch));
        Assert.InRange(bound, 1671.5m / 54, yardage.Layout.Length.In(LengthUnit.Inch));
        Assert.True(yardage.Layout.Length <= In(39.5m), yardage.Layout.Length.ToString());
        Assert.InRange(yardage.SoldUnits, 0.875m, 1.125m);
        Assert.Equal(1671.5 / (54 * (double)yardage.Layout.Length.In(LengthUnit.Inch)), yardage.Layout.Used, 1e-9);
    }

    [Fact]
    public void The_same_box_takes_at_most_11_tenths_of_a_metre() =>
        Assert.InRange(
            Quote(Order(Fabric with { Sold = new SaleRule(SaleUnit.M, Mm(100), Length.Zero) }, Box)).Yardages[0].SoldUnits,
            0.8m,
            1.1m
        );

    [Fact]
    public void A_piece_wider_than_the_fabric_is_laid_where_it_may_turn_and_is_a_violation_elsewhere()
    {
        FabricSpecification railroaded = Fabric with { Grain = Grain.Either };

        Assert.Equal(In(60), Quote(Order(railroaded, Piece("bench", 1, 60, 20))).Yardages[0].Layout.Length);
        Assert.Equal(
            "wider-than-fabric",
            Assert.Single(Engine.Quoting.Drafting.Of(Order(Fabric, Piece("bench", 1, 60, 20))).Violations).Code
        );
    }
}
