using CushionService.Nesting.Outlines;
using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Outlines;

/// <summary>What a run costs and keeps: the same answer every time, no allocation per step, cancellation.</summary>
public sealed class OutlineRunFacts
{
    private static readonly StripProblem Problem = new()
    {
        Width = 1_346_200,
        Pieces =
        [
            Shapes.Disc(430_000, 52) with
            {
                Quantity = 4,
            },
            Shapes.Piece((0, 0), (600_000, 0), (500_000, 450_000), (100_000, 450_000)) with
            {
                Quantity = 4,
                Rotations = Rotations.HalfTurn,
            },
            Shapes.Piece(
                (80_000, 0),
                (580_000, 0),
                (580_000, 400_000),
                (660_000, 400_000),
                (660_000, 520_000),
                (0, 520_000),
                (0, 400_000),
                (80_000, 400_000)
            ) with
            {
                Quantity = 2,
                Rotations = Rotations.HalfTurn,
            },
            new NestingPiece
            {
                Width = 1_300_000,
                Length = 100_000,
                Quantity = 2,
            },
        ],
    };

    private const int Tries = 10;

    [Fact]
    public void The_same_problem_gives_the_same_layout_again_and_on_two_threads_at_once()
    {
        var first = Nester.Nest(Problem, Effort.Quick);
        var others = new StripLayout[2];
        var threads = Enumerable.Range(0, 2).Select(index => new Thread(() => others[index] = Nester.Nest(Problem, Effort.Quick))).ToList();
        threads.ForEach(thread => thread.Start());
        threads.ForEach(thread => thread.Join());
        foreach (var other in others)
        {
            Assert.Equal(first.Length, other.Length);
            Assert.Equal(first.Steps, other.Steps);
            Assert.Equal(first.Placements.AsEnumerable(), other.Placements);
        }
    }

    [Fact]
    public void Several_descents_give_the_same_layout_on_one_thread_and_on_two()
    {
        var few = Problem with
        {
            Width = 700_000,
            Pieces = [Problem.Pieces[0] with { Quantity = 1 }, Problem.Pieces[1] with { Quantity = 1 }],
        };
        var floor = Nester.OnePass(few);
        foreach (var problem in new[] { few, few with { Sale = new SaleLadder(0, 228_600, 1, 1) } })
        {
            // Steps for four descents of two copies.
            var alone = OutlineKernel.Search(problem, floor, 41_000_000, CancellationToken.None, threads: 1);
            var both = OutlineKernel.Search(problem, floor, 41_000_000, CancellationToken.None, threads: 2);
            Assert.Equal(alone.Steps, both.Steps);
            Assert.Equal(alone.Placements.AsEnumerable(), both.Placements);
        }
    }

    [Theory]
    [InlineData(4, 2_000_000, 4_000_000)]
    [InlineData(2, 22_000_000, 26_000_000)]
    public void More_steps_allocate_nothing_more(int pieces, long fewer, long more)
    {
        // All twelve copies in one descent, or two in two descents.
        var problem =
            pieces == 4 ? Problem : Problem with { Pieces = [.. Problem.Pieces.Select(piece => piece with { Quantity = 1 }).Take(pieces)] };
        var floor = Nester.OnePass(problem);
        Allocated(fewer / 10);

        // Millions of steps more, and no more than a small object. The runtime allocates for itself now and then, as when it compiles
        // anew; an allocation of ours would be there in every try.
        var differences = Enumerable.Range(0, Tries).Select(_ => Allocated(more) - Allocated(fewer));
        Assert.Contains(differences, difference => difference is >= -256 and <= 256);

        long Allocated(long steps) =>
            Allocation.Least(() => OutlineKernel.Search(problem, floor, steps, CancellationToken.None, threads: 1));
    }

    [Fact]
    public void A_caller_who_gives_up_is_heard()
    {
        using var source = new CancellationTokenSource(TimeSpan.FromMilliseconds(50));
        Assert.Throws<OperationCanceledException>(() => Nester.Nest(Problem, Effort.Thorough, source.Token));
    }

    // A hundred corners in and out give thousands of segments for each pair: more than a quick search has steps for, while hulls are cheap.
    [Fact]
    public void Outlines_too_jagged_for_the_effort_are_laid_by_their_convex_hulls()
    {
        var jagged = new StripProblem { Width = 2_000, Pieces = [.. Enumerable.Range(1, 3).Select(Star)] };

        var layout = Nester.Nest(jagged, Effort.Quick);
        Assert.InRange(layout.Length, layout.LowerBound, Nester.Nest(Boxed(jagged), Effort.Quick).Length - 1);

        static NestingPiece Star(int number)
        {
            GridPoint[] corners =
            [
                .. Enumerable
                    .Range(0, 100)
                    .Select(corner =>
                    {
                        var (radius, angle) = (300 + (number * 7919L * corner % 211), 2 * Math.PI * corner / 100);
                        return new GridPoint((long)Math.Round(radius * Math.Cos(angle)), (long)Math.Round(radius * Math.Sin(angle)));
                    }),
            ];
            var (left, low) = (corners.Min(corner => corner.X), corners.Min(corner => corner.Y));
            return new NestingPiece
            {
                Width = corners.Max(corner => corner.X) - left,
                Length = corners.Max(corner => corner.Y) - low,
                Quantity = 2,
                Outline = [.. corners.Select(corner => new GridPoint(corner.X - left, corner.Y - low))],
            };
        }

        static StripProblem Boxed(StripProblem problem) =>
            problem with
            {
                Pieces = [.. problem.Pieces.Select(piece => piece with { Outline = [] })],
            };
    }
}
