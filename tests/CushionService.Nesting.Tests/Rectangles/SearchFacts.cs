using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;
using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Rectangles;

public sealed class SearchFacts
{
    [Fact]
    public void The_answer_is_the_same_on_every_run_and_beside_another_thread()
    {
        var problem = Mixed(40);
        var alone = Nester.Nest(problem, Effort.Quick);
        var together = new StripLayout[2];
        Parallel.For(0, 2, index => together[index] = Nester.Nest(problem, Effort.Quick));
        Assert.All(together, layout => Assert.Equal(alone.Placements.AsEnumerable(), layout.Placements.AsEnumerable()));
        Assert.All(together, layout => Assert.Equal(alone.Steps, layout.Steps));
    }

    [Fact]
    public void What_is_sold_by_the_yard_is_still_laid_as_short_as_it_goes()
    {
        var byTheUnit = Nester.Nest(Mixed(30), Effort.Standard);
        var byTheYard = Nester.Nest(Mixed(30) with { Sale = new SaleLadder(0, 10 * byTheUnit.Length, 1, 1) }, Effort.Standard);
        var onePass = Nester.OnePass(Mixed(30));
        Assert.True(byTheYard.ProvenMinimal);
        Assert.InRange(byTheYard.Length, byTheYard.LowerBound, onePass.Length - 1);
    }

    // The extents have no common measure, so that no table helps; a bound below the layout must not keep the search going for ever.
    [Theory]
    [InlineData(30_011, 50_021, 30_011)]
    [InlineData(50_021, 30_011, 30_011)]
    [InlineData(53_993, 53_987, 53_987)]
    public void A_single_piece_lies_with_its_shorter_side_along(long width, long length, long expected)
    {
        var problem = new StripProblem
        {
            Width = 54_001,
            Pieces =
            [
                new NestingPiece
                {
                    Width = width,
                    Length = length,
                    Rotations = Rotations.QuarterTurns,
                },
            ],
        };
        Assert.Equal(expected, Nester.Nest(problem, Effort.Quick).Length);
    }

    [Fact]
    public void A_pass_of_the_search_allocates_nothing()
    {
        var problem = Mixed(60);
        var set = new RectangleSet(problem.Pieces, problem.Width);
        var pass = new SkylinePass(set, problem.Width, set.Copies);
        var budget = new StepBudget(long.MaxValue, CancellationToken.None);
        int[] order = [.. Enumerable.Range(0, set.Copies)];
        pass.Lay(order, 1_000, set.Area, budget);
        Assert.Equal(
            0,
            Allocation.Least(() =>
            {
                for (var run = 0; run < 100; run++)
                {
                    pass.Lay(order, 1_000, set.Area, budget);
                }
            })
        );
    }

    [Fact]
    public void A_caller_who_gives_up_gets_no_layout()
    {
        using var source = new CancellationTokenSource();
        source.CancelAfter(50);
        Assert.ThrowsAny<OperationCanceledException>(Forever);

        void Forever()
        {
            for (var seed = 0; ; seed++)
            {
                Nester.Nest(Mixed(50 + seed), Effort.Thorough, source.Token);
            }
        }
    }

    [Fact]
    public void Ten_thousand_pieces_are_laid_and_audited_in_one_pass() =>
        Assert.Equal(10_000, Nester.OnePass(Mixed(10_000)).Placements.Length);

    [Fact]
    public void A_strip_sold_in_long_steps_is_proven_by_area_where_the_step_allows()
    {
        // Three squares of 10 on a strip of 20 are 20 long and fill 15 of it: both are sold as 25.
        var problem = new StripProblem
        {
            Width = 20,
            Pieces =
            [
                new NestingPiece
                {
                    Width = 10,
                    Length = 10,
                    Quantity = 3,
                },
            ],
            Sale = new SaleLadder(0, 25, 1, 1),
        };
        var layout = Nester.Nest(problem, Effort.Quick);
        Assert.True(layout.ProvenMinimal);
        Assert.Equal(ProofKind.Area, layout.Proof);
        Assert.Equal(20, layout.Length);
    }

    [Fact]
    public void Pieces_wider_than_half_the_strip_lie_one_above_the_other_and_a_dual_feasible_function_proves_it()
    {
        var problem = new StripProblem
        {
            Width = 216,
            Pieces =
            [
                new NestingPiece
                {
                    Width = 112,
                    Length = 112,
                    Quantity = 6,
                    Rotations = Rotations.QuarterTurns,
                },
            ],
        };
        var layout = Nester.Nest(problem, Effort.Quick);
        Assert.Equal(672, layout.Length);
        Assert.True(layout.ProvenMinimal);
        Assert.Equal(ProofKind.DualFeasible, layout.Proof);
        Assert.NotEmpty(layout.ProofFigures);
    }

    private static StripProblem Mixed(int count)
    {
        var random = new Random(count);
        return new StripProblem
        {
            Width = 216,
            Pieces =
            [
                .. Enumerable
                    .Range(0, count)
                    .Select(_ => new NestingPiece
                    {
                        Width = random.Next(10, 120),
                        Length = random.Next(10, 120),
                        Rotations = Rotations.QuarterTurns,
                    }),
            ],
        };
    }
}
