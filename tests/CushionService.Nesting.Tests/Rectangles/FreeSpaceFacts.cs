using CsCheck;
using CushionService.Nesting.Rectangles.Repeats;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;
using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Rectangles;

/// <summary>The free part of a strip as maximal empty rectangles, and the passes that lay copies in them.</summary>
public sealed class FreeSpaceFacts
{
    private const int Width = 24;

    [Fact]
    public void A_rectangle_is_free_where_it_meets_nothing_that_was_taken() =>
        Gen.Select(Gen.Int[-2, 20], Gen.Int[0, 30], Gen.Int[1, 8], Gen.Int[1, 8])
            .Array[1, 8]
            .Sample(
                boxes =>
                {
                    var space = new FreeSpace(Width);
                    space.Clear();
                    var taken = new List<FreeRectangle>();
                    foreach (var (x, y, across, along) in boxes)
                    {
                        taken.Add(new FreeRectangle(x, y, x + across, y + along));
                        space.Take(taken[^1], 1, 1, Budget());
                    }

                    for (var x = 0; x < Width - 2; x++)
                    {
                        for (var y = 0; y < 40; y++)
                        {
                            var box = new FreeRectangle(x, y, x + 3, y + 2);
                            bool within = x + 3 <= Width && !taken.Exists(other => other.Meets(box));
                            Assert.Equal(within, Enumerable.Range(0, space.All.Count).Any(at => space.All[at].Holds(box)));
                        }
                    }
                },
                seed: "0000000000001",
                iter: 200
            );

    [Fact]
    public void A_copy_lies_at_the_lowest_then_leftmost_position_of_its_phase_that_trying_every_position_finds()
    {
        var random = new Random(5);
        for (var index = 0; index < 200; index++)
        {
            var problem = Problem(random);
            var set = new RectangleSet(problem.Pieces, problem.Width);
            var pass = new RepeatPass(problem, set);
            int[] order = [.. Enumerable.Range(0, set.Copies)];
            Assert.Equal(0, pass.Lay(order, Skyline.Wall, 0, Budget()));
            var laid = new List<GridRectangle>(problem.Flaws);
            foreach (int copy in order)
            {
                var piece = problem.Pieces[set.PieceOf(copy)];
                var expected = LowestByTrying(problem, piece, laid);
                Assert.Equal(expected, (pass.Layout[copy].X, pass.Layout[copy].Y));
                laid.Add(new GridRectangle(expected.X, expected.Y, piece.Width, piece.Length));
            }
        }
    }

    [Fact]
    public void A_pass_in_free_rectangles_allocates_nothing()
    {
        var problem = Problem(new Random(9)) with { Flaws = [] };
        var set = new RectangleSet(problem.Pieces, problem.Width);
        var pass = new RepeatPass(problem, set);
        int[] order = [.. Enumerable.Range(0, set.Copies)];
        var budget = Budget();
        pass.Lay(order, Skyline.Wall, 0, budget);
        Assert.Equal(0, Allocation.Least(() => pass.Lay(order, Skyline.Wall, 0, budget)));
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(1, 1)]
    [InlineData(27, 27)]
    [InlineData(0, 9)]
    public void Thousands_of_copies_on_a_repeat_take_few_times_the_steps_of_a_quick_search(long across, long along)
    {
        var problem = new StripProblem
        {
            Width = 216,
            Repeat = new RepeatLattice(across, Math.Max(1, along), 0),
            Pieces =
            [
                .. Enumerable
                    .Range(1, 40)
                    .Select(kind => new NestingPiece
                    {
                        Width = 10 + 2 * kind,
                        Length = 100 - kind,
                        Quantity = 100,
                        Alignment = kind % 3 > 0 ? new Alignment(0, kind % Math.Max(1, along)) : null,
                    }),
            ],
        };
        Assert.InRange(Nester.Nest(problem, Effort.Quick).Steps, 1, 20_000_000);
    }

    private static StepBudget Budget() => new(long.MaxValue, CancellationToken.None);

    private static (long X, long Y) LowestByTrying(StripProblem problem, NestingPiece piece, List<GridRectangle> laid)
    {
        for (long y = 0; ; y++)
        {
            for (long x = 0; x + piece.Width <= problem.Width; x++)
            {
                bool free = laid.TrueForAll(r =>
                    r.X >= x + piece.Width || x >= r.X + r.Width || r.Y >= y + piece.Length || y >= r.Y + r.Length
                );
                if (free && IsOnPhase(problem.Repeat!, piece.Alignment, x, y))
                {
                    return (x, y);
                }
            }
        }
    }

    private static bool IsOnPhase(RepeatLattice lattice, Alignment? alignment, long x, long y)
    {
        if (alignment is not { } phase)
        {
            return true;
        }

        for (long column = -60; column <= 60; column++)
        {
            bool across = lattice.Width == 0 ? column == 0 : x == phase.PhaseX + column * lattice.Width;
            if (across && (y - phase.PhaseY - column * lattice.Drop) % lattice.Length == 0)
            {
                return true;
            }
        }

        return false;
    }

    private static StripProblem Problem(Random random)
    {
        long across = random.Next(0, 8);
        long along = random.Next(2, 9);
        return new StripProblem
        {
            Width = 20,
            Repeat = new RepeatLattice(across, along, across > 0 ? random.Next((int)along) : 0),
            Flaws = [new GridRectangle(random.Next(20), random.Next(10), 2, 3)],
            Pieces =
            [
                .. Enumerable
                    .Range(0, random.Next(1, 5))
                    .Select(_ => new NestingPiece
                    {
                        Width = random.Next(2, 12),
                        Length = random.Next(2, 9),
                        Quantity = random.Next(1, 4),
                        Alignment =
                            random.Next(3) > 0 ? new Alignment(random.Next((int)Math.Max(1, across)), random.Next((int)along)) : null,
                    }),
            ],
        };
    }
}
