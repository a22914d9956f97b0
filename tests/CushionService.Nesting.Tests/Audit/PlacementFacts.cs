using System.Collections.Immutable;
using CushionService.Nesting.Audit;

namespace CushionService.Nesting.Tests.Audit;

/// <summary>Placements read back: which turns a piece allows, what a turned piece covers, and that each copy is there once.</summary>
public sealed class PlacementFacts
{
    [Theory]
    [InlineData(Rotations.None, 0, true)]
    [InlineData(Rotations.None, 90, false)]
    [InlineData(Rotations.None, 180, false)]
    [InlineData(Rotations.None, 270, false)]
    [InlineData(Rotations.HalfTurn, 0, true)]
    [InlineData(Rotations.HalfTurn, 90, false)]
    [InlineData(Rotations.HalfTurn, 180, true)]
    [InlineData(Rotations.HalfTurn, 270, false)]
    [InlineData(Rotations.QuarterTurns, 0, true)]
    [InlineData(Rotations.QuarterTurns, 90, true)]
    [InlineData(Rotations.QuarterTurns, 180, true)]
    [InlineData(Rotations.QuarterTurns, 270, true)]
    [InlineData(Rotations.QuarterTurns, 45, false)]
    [InlineData(Rotations.QuarterTurns, 360, false)]
    public void A_piece_lies_only_in_turns_that_it_allows(Rotations rotations, int turn, bool allowed)
    {
        var piece = new NestingPiece
        {
            Width = 7,
            Length = 3,
            Rotations = rotations,
        };
        if (allowed)
        {
            var (width, length) = turn is 0 or 180 ? (7, 3) : (3, 7);
            Assert.Equal([new GridRectangle(2, 5, width, length)], PlacedRectangles.Of([piece], [new(0, 0, 0, 2, 5, turn)]));
        }
        else
        {
            Assert.Contains("turned", Message(() => PlacedRectangles.Of([piece], [new(0, 0, 0, 2, 5, turn)])), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(1)]
    public void A_placement_names_a_piece_of_the_problem(int piece) =>
        Assert.Contains(
            "names no piece",
            Message(() => PlacedRectangles.Of([new NestingPiece { Width = 1, Length = 1 }], [new(piece, 0, 0, 0, 0, 0)])),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("0.0 0.1 1.0", "", null)]
    [InlineData("1.0 0.1 0.0", "", null)]
    [InlineData("0.0 0.1", "1.0", null)]
    [InlineData("", "0.0 0.1 1.0", null)]
    [InlineData("0.0 0.1", "", "missing")]
    [InlineData("0.0 1.0", "", "missing")]
    [InlineData("0.0 0.1 1.0 1.0", "", "twice")]
    [InlineData("0.0 0.0 1.0", "", "twice")]
    [InlineData("0.0 0.1 1.0", "0.1", "twice")]
    [InlineData("0.0 0.1 0.2", "", "never demanded")]
    [InlineData("0.0 0.1 1.1", "", "never demanded")]
    [InlineData("0.0 0.-1 1.0", "", "never demanded")]
    [InlineData("0.0 0.1 2.0", "", "never demanded")]
    [InlineData("0.0 0.1 -1.0", "", "never demanded")]
    [InlineData("0.0 0.1 1.0", "2.0", "never demanded")]
    public void Two_copies_of_one_piece_and_one_of_another_are_there_once(string laid, string unplaced, string? fault)
    {
        // Written as piece.copy.
        ImmutableArray<NestingPiece> pieces =
        [
            new NestingPiece
            {
                Width = 1,
                Length = 1,
                Quantity = 2,
            },
            new NestingPiece { Width = 1, Length = 1 },
        ];
        void Check() =>
            EveryCopyOnce.Check(
                pieces,
                [.. Read(laid).Select(copy => new Placement(copy.Piece, copy.Copy, 0, 0, 0, 0))],
                [.. Read(unplaced)]
            );
        if (fault is null)
        {
            Check();
        }
        else
        {
            Assert.Contains(fault, Message(Check), StringComparison.Ordinal);
        }
    }

    private static string Message(Action check) => Assert.Throws<LayoutAuditException>(check).Message;

    private static IEnumerable<(int Piece, int Copy)> Read(string copies) =>
        copies
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(copy => copy.Split('.'))
            .Select(parts => (int.Parse(parts[0]), int.Parse(parts[1])));
}
