using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Rectangles;

/// <summary>Fabric with a repeat. That every aligned copy lies on its phase is the audit's business, which every layout passes.</summary>
public sealed class RepeatFacts
{
    [Fact]
    public void A_layout_is_never_longer_than_the_trades_rule_of_rounding_cuts_up_to_whole_repeats()
    {
        // The rule as printed for shops (common practice, no source): cuts side by side while they fit, each taking whole repeats.
        for (var seed = 0; seed < 300; seed++)
        {
            var problem = Order(new Random(seed), seed);
            var layout = Nester.Nest(problem, Effort.Quick);
            Assert.True(layout.Length <= Nester.RuleOfThumb(problem), $"order {seed}");
            Assert.True(layout.Length <= RowsOfWholeRepeats(problem), $"order {seed} against rows");
        }
    }

    [Fact]
    public void Two_faces_and_a_boxing_at_one_phase_share_a_row_of_the_repeat()
    {
        // Two 20 × 20 faces on a 24 × 24 repeat need 24 + 20 across; the plain boxing fits between rows.
        var problem = new StripProblem
        {
            Width = 54,
            Repeat = new RepeatLattice(24, 24, 0),
            Pieces =
            [
                new NestingPiece
                {
                    Width = 20,
                    Length = 20,
                    Quantity = 2,
                    Alignment = new Alignment(2, 2),
                },
                new NestingPiece { Width = 50, Length = 2 },
            ],
        };
        Assert.Equal(22, Nester.Nest(problem, Effort.Standard).Length);
    }

    [Fact]
    public void On_a_half_drop_the_second_column_starts_half_a_repeat_later()
    {
        var problem = new StripProblem
        {
            Width = 48,
            Repeat = new RepeatLattice(24, 24, 12),
            Pieces =
            [
                new NestingPiece
                {
                    Width = 20,
                    Length = 20,
                    Quantity = 2,
                    Alignment = new Alignment(0, 0),
                },
            ],
        };
        Assert.Equal(32, Nester.Nest(problem, Effort.Standard).Length);
    }

    private static long RowsOfWholeRepeats(StripProblem problem)
    {
        // Rows of cells of whole repeats; the plain cuts follow in shelves of their own. A row of a straight repeat starts on the lattice.
        var lattice = problem.Repeat!;
        long cell = Math.Max(1, lattice.Width);
        long y = problem.Pieces[0].Alignment!.Value.PhaseY;
        var (x, end) = (0L, 0L);
        foreach (var piece in problem.Pieces)
        {
            for (var copy = 0; copy < piece.Quantity; copy++)
            {
                long across = (piece.Width + cell - 1) / cell * cell;
                long along = (piece.Length + lattice.Length - 1) / lattice.Length * lattice.Length;
                if (x + piece.Width > problem.Width)
                {
                    (x, y) = (0, end);
                }

                x += across;
                end = Math.Max(end, y + along);
            }
        }

        return end;
    }

    private static StripProblem Order(Random random, int seed)
    {
        long across = seed % 3 == 0 ? 0 : random.Next(20, 110);
        long along = random.Next(20, 110);
        var phase = new Alignment(0, random.Next((int)along));
        return new StripProblem
        {
            Width = 216,
            Repeat = new RepeatLattice(across, along, 0),
            Pieces =
            [
                .. Enumerable
                    .Range(0, random.Next(2, 5))
                    .Select(_ => new NestingPiece
                    {
                        Width = random.Next(20, 105),
                        Length = random.Next(10, 110),
                        Quantity = random.Next(1, 4),
                        Alignment = phase,
                    }),
            ],
        };
    }
}
