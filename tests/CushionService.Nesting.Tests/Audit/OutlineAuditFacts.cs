using System.Collections.Immutable;
using CsCheck;
using CushionService.Nesting.Audit;
using CushionService.Nesting.Solving;
using CushionService.Nesting.Tests.Outlines;

namespace CushionService.Nesting.Tests.Audit;

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

    // A layout that the kernel made and the audit passed, spoiled in one place.
    [Fact]
    public void A_good_layout_with_one_copy_moved_into_another_is_refused() =>
        Gen.Select(Gen.Int[60, 120], Shapes.GenPiece.Array[2, 5], Gen.Int[0, 100], Gen.Int[0, 100], Gen.Int[-1, 1], Gen.Int[-1, 1])
            .Sample(
                (width, pieces, one, other, dx, dy) =>
                {
                    var problem = new StripProblem { Width = width, Pieces = [.. pieces] };
                    var layout = Nester.Nest(problem, Effort.Quick);
                    var (moved, still) = (one % layout.Placements.Length, other % layout.Placements.Length);
                    var to = layout.Placements[still];

                    // Onto the other copy, or one unit beside where it was: refused exactly when NetTopologySuite sees an area shared, or
                    // when it left the strip or changed its length.
                    foreach (var (x, y) in new[] { (to.X, to.Y), (layout.Placements[moved].X + dx, layout.Placements[moved].Y + dy) })
                    {
                        var spoiled = layout with
                        {
                            Placements = layout.Placements.SetItem(moved, layout.Placements[moved] with { X = x, Y = y }),
                        };
                        var placed = spoiled.Placements.Select(at => Shapes.Placed(problem.Pieces[at.Piece], at).EnvelopeInternal).ToList();
                        var bad =
                            Shapes.LargestSharedArea(problem, spoiled) > 1e-9
                            || placed.Exists(box => box.MinX < 0 || box.MinY < 0 || box.MaxX > width)
                            || placed.Max(box => box.MaxY) != layout.Length;
                        Assert.Equal(bad, Record.Exception(() => OutlineAudit.Check(problem, spoiled)) is LayoutAuditException);
                    }
                },
                seed: "0000000000001",
                iter: 60
            );

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
