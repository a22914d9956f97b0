using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Search;
using CushionService.Nesting.Solving;
using Xunit.Abstractions;

namespace CushionService.Nesting.Tests.Rectangles;

/// <summary>The bound for pieces on a repeat, against every layout of tiny strips.</summary>
public sealed class RepeatBoundFacts(ITestOutputHelper output)
{
    private const int Cases = 3_000;

    [Theory]
    [InlineData(54, 24, 20, 3, 2 + 24 + 20, "two of 20 fit side by side, the third lies a repeat higher")]
    [InlineData(54, 24, 20, 5, 2 + 2 * 24 + 20, "three rows of two, two and one")]
    [InlineData(
        54,
        27,
        28,
        2,
        2 + 54 + 28,
        "a cut a little larger than the repeat takes two motifs each way, so two lie one upon the other"
    )]
    [InlineData(108, 27, 28, 3, 2 + 54 + 28, "four columns hold two such cuts side by side")]
    public void Cuts_of_one_size_at_one_phase_take_rows_of_whole_motifs(
        long width,
        long repeat,
        long side,
        int quantity,
        long length,
        string _
    )
    {
        // General mathematics: whole motifs across a width, whole rows along it.
        const long Phase = 2;
        var problem = new StripProblem
        {
            Width = width,
            Repeat = new RepeatLattice(repeat, repeat, 0),
            Pieces =
            [
                new NestingPiece
                {
                    Width = side,
                    Length = side,
                    Quantity = quantity,
                    Alignment = new Alignment(Phase, Phase),
                },
            ],
        };
        var layout = Nester.Nest(problem, Effort.Quick);
        Assert.Equal((length, length, true), (layout.LowerBound, layout.Length, layout.ProvenMinimal));
        Assert.Contains("motifs", layout.ProofFigures, StringComparison.Ordinal);
    }

    [Fact]
    public void No_layout_of_a_tiny_strip_beats_the_bound()
    {
        var random = new Random(19);
        var (tight, better, proven) = (0, 0, 0);
        for (var index = 0; index < Cases; index++)
        {
            var problem = Problem(random);
            if (Optimum(problem) is not { } optimum)
            {
                continue;
            }

            long bound = new RepeatBound(problem, new StepBudget(long.MaxValue, CancellationToken.None)).Length;
            Assert.True(bound <= optimum, $"case {index}: bound {bound}, optimum {optimum}: {problem}");
            long area = problem.Pieces.Sum(piece => piece.Width * piece.Length * piece.Quantity);
            tight += bound == optimum ? 1 : 0;
            better += bound > (area + problem.Width - 1) / problem.Width ? 1 : 0;
            var layout = Nester.Nest(problem, Effort.Quick);
            Assert.True(layout.LowerBound <= optimum, $"case {index}: {layout.LowerBound} by {layout.ProofFigures}, optimum {optimum}");
            Assert.True(!layout.ProvenMinimal || layout.Length == optimum, $"case {index}: {layout.Length} is not minimal");
            proven += layout.ProvenMinimal ? 1 : 0;
        }

        output.WriteLine($"{tight} of {Cases} bounds are reached, {better} exceed the area's; {proven} layouts proven minimal");
        Assert.True(tight > Cases / 3 && better > Cases / 2, $"{tight} reached, {better} better than the area");
    }

    /// <summary>One to three kinds, some of them aligned, on a straight repeat, a drop repeat, or one that does not repeat
    /// across.</summary>
    private static StripProblem Problem(Random random)
    {
        var (width, along) = (random.Next(3, 9), random.Next(2, 5));
        long across = random.Next(4) == 0 ? 0 : random.Next(2, 5);
        var lattice = new RepeatLattice(across, along, across == 0 || random.Next(2) == 0 ? 0 : random.Next(along));
        return new StripProblem
        {
            Width = width,
            Repeat = lattice,
            Pieces =
            [
                .. Enumerable
                    .Range(0, random.Next(1, 4))
                    .Select(kind =>
                    {
                        bool aligned = kind == 0 || random.Next(3) > 0;
                        return new NestingPiece
                        {
                            Width = random.Next(1, width + 1),
                            Length = random.Next(1, 6),
                            Quantity = random.Next(1, 3),
                            Rotations = aligned ? Rotations.None : (Rotations)random.Next(3),
                            Alignment = aligned ? new Alignment(random.Next(-3, 6), random.Next(-3, 6)) : null,
                        };
                    }),
            ],
        };
    }

    /// <summary>The shortest length of any layout, by trying every place of every copy; null when a piece fits nowhere, or the strip
    /// would be long.</summary>
    private static int? Optimum(StripProblem problem)
    {
        int[] pieces = [.. Enumerable.Range(0, problem.Pieces.Length).SelectMany(at => Enumerable.Repeat(at, problem.Pieces[at].Quantity))];
        for (var length = 1; length <= 16; length++)
        {
            if (Lay(problem, pieces, 0, new int[length], 0))
            {
                return length;
            }
        }

        return null;
    }

    // Each row of the strip is a set of bits, one for each cell that is taken. Equal copies are laid in the order of their places.
    private static bool Lay(StripProblem problem, int[] pieces, int at, int[] rows, int from)
    {
        if (at == pieces.Length)
        {
            return true;
        }

        var piece = problem.Pieces[pieces[at]];
        for (int place = from; place < 2 * problem.Width * rows.Length; place++)
        {
            var (turned, x, y) = (place % 2 == 1, place / 2 % (int)problem.Width, place / 2 / (int)problem.Width);
            var (across, along) = turned ? ((int)piece.Length, (int)piece.Width) : ((int)piece.Width, (int)piece.Length);
            int bits = ((1 << across) - 1) << x;
            if (
                (turned && piece.Rotations != Rotations.QuarterTurns)
                || x + across > problem.Width
                || y + along > rows.Length
                || !IsOnPhase(problem, piece, x, y)
                || Array.Exists(rows[y..(y + along)], row => (row & bits) != 0)
            )
            {
                continue;
            }

            int[] next = [.. rows.Select((row, level) => level >= y && level < y + along ? row | bits : row)];
            bool again = at + 1 < pieces.Length && pieces[at + 1] == pieces[at];
            if (Lay(problem, pieces, at + 1, next, again ? place : 0))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsOnPhase(StripProblem problem, NestingPiece piece, int x, int y)
    {
        if (piece.Alignment is not { } phase)
        {
            return true;
        }

        var (width, length, drop) = problem.Repeat!;
        long column = width == 0 ? 0 : (x - phase.PhaseX) / width;
        return (width == 0 || (x - phase.PhaseX) % width == 0) && (y - phase.PhaseY - column * drop) % length == 0;
    }
}
