using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>Fabric that is sold by the roll: a piece is cut from one roll.</summary>
public sealed class RollFacts
{
    private static readonly FabricSpecification Rolls = Fabric with { Sold = new SaleRule(SaleUnit.Yd, In(360), Length.Zero) };

    [Theory]
    [InlineData(SaleUnit.Yd, 36, false)]
    [InlineData(SaleUnit.Yd, 180, true)]
    [InlineData(SaleUnit.M, 196, false)]
    [InlineData(SaleUnit.M, 394, true)]
    public void A_step_that_nobody_cuts_is_a_roll(SaleUnit unit, int step, bool roll) =>
        // Common practice, no source: 5 yd or 5 m and more.
        Assert.Equal(roll, new SaleRule(unit, In(step), Length.Zero).IsByTheRoll);

    [Theory]
    [InlineData(7, 100, 0, 3)] // three of 100 in on each 360, where 700 in would run on over 720
    [InlineData(8, 90, 0, 2)] // four of 90 fill a roll
    [InlineData(8, 90, 1, 3)] // which they do not once its end is squared
    [InlineData(3, 100, 0, 1)]
    public void No_piece_lies_across_two_rolls(int copies, int length, int squaring, int rolls)
    {
        // By hand: 40 in do not lie side by side on 54.
        Yardage yardage = Laid(Rolls with { Squaring = In(squaring) }, Piece("runner", copies, 40, length));

        Assert.Equal(rolls * In(360), yardage.Sold);
        Assert.Equal(copies, yardage.Layout.Placements.Length);
        Assert.All(yardage.Layout.Placements, laid => Assert.True(InRoll(laid.Y) + laid.Length <= In(360 - squaring)));
        Violation? said = CutsNote.Of([yardage]).SingleOrDefault();
        Assert.Equal(rolls > 1, said is not null);
        Assert.Equal(
            rolls > 1
                ? $"main is bought as {rolls} rolls of 10 yd, and no piece lies across two of them. Ask for rolls of one dye lot, for "
                    + "colours differ from lot to lot, and a cushion may be cut from two rolls."
                : null,
            said?.Detail.ToString()
        );
    }

    [Fact]
    public void What_rolls_leave_is_proven_only_where_the_pieces_in_one_length_prove_it()
    {
        // By hand: 8 × 90 in need two rolls wherever they lie; 7 × 100 in might do with two if they could run on, and take three.
        Assert.True(Laid(Rolls, Piece("runner", 8, 40, 90)).Layout.ProvenMinimal);
        Assert.False(Laid(Rolls, Piece("runner", 7, 40, 100)).Layout.ProvenMinimal);
    }

    [Fact]
    public void A_remnant_ends_with_its_roll()
    {
        // By hand: 60 in are left of each of two rolls after three of 100, and 260 of the third; beside the pieces 14 in all along.
        Remnant[] left = [.. Remnants.Of(Laid(Rolls, Piece("runner", 7, 40, 100)), In(20))];

        Assert.Equal([In(260), In(60), In(60)], left.Select(remnant => remnant.Length));
        Assert.All(left, remnant => Assert.True(InRoll(remnant.Y) + remnant.Length <= In(360)));
    }

    [Fact]
    public void Round_pieces_lie_on_their_rolls_too()
    {
        CushionSpecification round = KnifeEdge(50, 50, HandSewn) with { Outline = new CircleOutline(In(50)), Quantity = 8 };
        Yardage yardage = Quote(Order(round, Rolls)).Yardages.Single();

        // By hand: 16 discs of 51 in, one beside the other on 54: seven on a roll.
        Assert.Equal(In(1080), yardage.Sold);
        Assert.All(yardage.Layout.Placements, laid => Assert.True(InRoll(laid.Y) + laid.Length <= In(360)));
    }

    [Fact]
    public void A_piece_longer_than_a_roll_is_said_and_nothing_is_proven()
    {
        Yardage yardage = Laid(Rolls, Piece("runner", 1, 40, 400));

        Assert.True(yardage.Layout.CrossesRolls);
        Assert.False(yardage.Layout.ProvenMinimal);
        Assert.Null(LayoutProof.Of(yardage.Layout));
        Assert.Contains(
            "its layout runs on from roll to roll",
            CutsNote.Of([yardage]).Single().Detail.ToString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_matched_print_runs_on_from_roll_to_roll_and_that_is_said()
    {
        // Common practice, no source: each roll begins elsewhere in its repeat, so that only a layout at the table can say what fits on it.
        FabricSpecification printed = Rolls with
        {
            Repeat = new RepeatSpecification(In(9), null, DropKind.Straight),
        };
        Yardage yardage = Quote(Order(KnifeEdge(40, 40, HandSewn) with { Quantity = 6 }, printed)).Yardages.Single();

        Assert.True(yardage.Layout.CrossesRolls);
        Assert.False(yardage.Layout.ProvenMinimal);
        Assert.Equal("several-cuts", CutsNote.Of([yardage]).Single().Code);
    }

    private static Length InRoll(Length y) => Length.FromNanometres(y.Nanometres % In(360).Nanometres);

    private static Yardage Laid(FabricSpecification fabric, params LoosePieceSpecification[] pieces) =>
        Quote(Order(fabric, pieces)).Yardages.Single();
}
