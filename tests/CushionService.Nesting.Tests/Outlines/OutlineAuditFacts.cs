using System.Collections.Immutable;
using CushionService.Nesting.Audit;

namespace CushionService.Nesting.Tests.Outlines;

public sealed class OutlineAuditFacts
{
    private static readonly StripProblem Problem = new()
    {
        Width = 100,
        Pieces =
        [
            Shapes.Piece((0, 0), (60, 0), (0, 60)) with
            {
                Quantity = 2,
                Rotations = Rotations.HalfTurn,
            },
            new NestingPiece { Width = 40, Length = 10 },
        ],
        Flaws = [new GridRectangle(70, 40, 5, 5)],
    };

    [Fact]
    public void A_layout_in_which_pieces_touch_passes() => Check(new(0, 0, 0, 0, 0, 0), new(0, 1, 0, 0, 0, 180), new(1, 0, 0, 60, 0, 0));

    [Fact]
    public void A_turn_takes_the_outline_with_it() =>
        Refused("Two copies overlap", new(0, 0, 0, 0, 0, 0), new(0, 1, 0, 0, 0, 0), new(1, 0, 0, 60, 0, 0));

    [Fact]
    public void One_unit_of_overlap_is_refused() =>
        Refused("Two copies overlap", new(0, 0, 0, 0, 0, 0), new(0, 1, 0, 0, 1, 180), new(1, 0, 0, 59, 0, 0));

    [Fact]
    public void A_piece_on_a_flaw_is_refused() => Refused("flaw", new(0, 0, 0, 0, 0, 0), new(0, 1, 0, 0, 0, 180), new(1, 0, 0, 60, 35, 0));

    [Fact]
    public void A_piece_outside_the_strip_is_refused() =>
        Refused("outside", new(0, 0, 0, 0, 0, 0), new(0, 1, 0, 0, 0, 180), new(1, 0, 0, 61, 0, 0));

    [Fact]
    public void A_turn_that_is_not_allowed_is_refused() =>
        Refused("turned", new(0, 0, 0, 0, 0, 0), new(0, 1, 0, 0, 0, 90), new(1, 0, 0, 60, 0, 0));

    [Fact]
    public void A_missing_copy_is_refused() => Refused("missing", new(0, 0, 0, 0, 0, 0), new(1, 0, 0, 60, 0, 0));

    private static void Refused(string word, params ImmutableArray<Placement> placements) =>
        Assert.Contains(word, Assert.Throws<LayoutAuditException>(() => Check(placements)).Message);

    private static void Check(params ImmutableArray<Placement> placements) =>
        OutlineAudit.Check(
            Problem,
            new StripLayout
            {
                Length = placements.Max(placement => placement.Y + (placement.Piece == 0 ? 60 : 10)),
                LowerBound = 0,
                ProvenMinimal = false,
                Proof = ProofKind.None,
                Placements = placements,
                Steps = 0,
            }
        );
}
