using System.Collections.Immutable;
using CushionService.Nesting.Audit;
using CushionService.Nesting.Tests.Outlines;

namespace CushionService.Nesting.Tests.Audit;

/// <summary>Outlines that lie turned, and copies that lie in each other's boxes.</summary>
public sealed class OutlineTurnFacts
{
    // An ell 20 wide and 30 long: a foot of 20 × 10 and an upright of 10 × 30.
    private static readonly NestingPiece Ell = Shapes.Piece((0, 0), (20, 0), (20, 10), (10, 10), (10, 30), (0, 30)) with
    {
        Rotations = Rotations.QuarterTurns,
    };

    [Theory]
    [InlineData(0, 10, 10, 10, 20)]
    [InlineData(90, 0, 10, 20, 10)]
    [InlineData(180, 0, 0, 10, 20)]
    [InlineData(270, 10, 0, 20, 10)]
    public void The_notch_of_an_ell_turns_with_it(int turn, long left, long lower, long width, long length)
    {
        // A filler of just the notch fits it in each turn, and overlaps one unit to any side within the box of the ell.
        var upright = turn is 0 or 180;
        var (across, along) = upright ? (20L, 30L) : (30L, 20L);
        var problem = new StripProblem { Width = 40, Pieces = [Ell, new NestingPiece { Width = width, Length = length }] };
        Check(problem, along, new(0, 0, 0, 0, 0, turn), new(1, 0, 0, left, lower, 0));
        var inward = (X: left == 0 ? 1 : -1, Y: lower == 0 ? 1 : -1);
        Refused(problem, along, new(0, 0, 0, 0, 0, turn), new(1, 0, 0, left + inward.X, lower, 0));
        Refused(problem, along, new(0, 0, 0, 0, 0, turn), new(1, 0, 0, left, lower + inward.Y, 0));
        Assert.True(left + width <= across && lower + length <= along);
    }

    [Theory]
    [InlineData(0, 40, false)]
    [InlineData(20, 40, true)]
    [InlineData(19, 40, false)]
    [InlineData(20, 39, true)]
    public void Copies_that_begin_higher_are_looked_at_until_the_first_one_ends(long x, long y, bool passes)
    {
        // A tall piece, and others whose boxes begin within its length.
        var problem = new StripProblem
        {
            Width = 60,
            Pieces = [new NestingPiece { Width = 20, Length = 50 }, Shapes.Piece((0, 0), (10, 0), (0, 10)) with { Quantity = 3 }],
        };
        ImmutableArray<Placement> placements =
        [
            new(1, 0, 0, 30, 0, 0),
            new(1, 1, 0, x, y, 0),
            new(0, 0, 0, 0, 0, 0),
            new(1, 2, 0, 45, 7, 0),
        ];
        if (passes)
        {
            Check(problem, 50, placements);
        }
        else
        {
            Refused(problem, 50, placements);
        }
    }

    [Fact]
    public void What_is_refused_names_both_copies()
    {
        var problem = new StripProblem { Width = 40, Pieces = [Ell with { Quantity = 2 }] };
        var refusal = Assert.Throws<LayoutAuditException>(() => Check(problem, 31, new(0, 0, 0, 0, 1, 0), new(0, 1, 0, 5, 0, 0)));
        Assert.Contains("Copy = 0", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("Copy = 1", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_convex_outline_is_one_part_and_an_ell_four_triangles()
    {
        Assert.Single(ConvexCut.Of(Corners((0, 0), (5, 0), (10, 0), (10, 10), (0, 10))));
        Assert.Equal(4, ConvexCut.Of([.. Ell.Outline]).Length);

        // A corner on a straight edge, met first, is cut off without a triangle.
        Assert.Equal(4, ConvexCut.Of(Corners((10, 0), (20, 0), (20, 10), (10, 10), (10, 30), (0, 30), (0, 0))).Length);
    }

    [Fact]
    public void An_outline_that_runs_clockwise_is_refused() =>
        Assert.Throws<LayoutAuditException>(() => ConvexCut.Of(Corners((0, 30), (10, 30), (10, 10), (20, 10), (20, 0), (0, 0))));

    [Fact]
    public void Parts_meet_in_every_direction_and_part_at_a_touch()
    {
        // A diamond against one that is moved: the lines of its slanting edges part them, though their boxes overlap.
        ConvexPart diamond = new(Corners((5, 0), (10, 5), (5, 10), (0, 5)));
        for (long dx = -12; dx <= 12; dx++)
        {
            for (long dy = -12; dy <= 12; dy++)
            {
                Assert.Equal(Math.Abs(dx) + Math.Abs(dy) < 10, diamond.Meets(diamond, dx, dy));
            }
        }
    }

    private static void Refused(StripProblem problem, long length, params ImmutableArray<Placement> placements) =>
        Assert.Contains(
            "overlap",
            Assert.Throws<LayoutAuditException>(() => Check(problem, length, placements)).Message,
            StringComparison.Ordinal
        );

    private static void Check(StripProblem problem, long length, params ImmutableArray<Placement> placements) =>
        OutlineAudit.Check(
            problem,
            new StripLayout
            {
                Length = length,
                LowerBound = 0,
                ProvenMinimal = false,
                Proof = ProofKind.None,
                Placements = placements,
                Steps = 0,
            }
        );

    private static GridPoint[] Corners(params (long X, long Y)[] corners) =>
        [.. corners.Select(corner => new GridPoint(corner.X, corner.Y))];
}
