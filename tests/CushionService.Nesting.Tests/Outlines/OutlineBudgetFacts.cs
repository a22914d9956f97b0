using CushionService.Nesting.Outlines;
using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Outlines;

/// <summary>Every effort keeps its steps, whatever the order: work that is not counted would go on until the token ends it.</summary>
public sealed class OutlineBudgetFacts
{
    private const double Inch = 25_400;

    /// <summary>A quick search takes some tens of milliseconds; a machine with much else to do gets a thousand times as long.</summary>
    private static readonly TimeSpan FarTooLong = TimeSpan.FromSeconds(60);

    public static IEnumerable<object[]> Repeats =>
        from repeat in (double[])[27, 13.5, 9, 1, 0.25]
        from discs in (int[])[2, 20, 200]
        select (object[])[repeat, discs];

    // A round box 16 in wide is two discs of 17 in and a boxing strip, its faces matched to the repeat.
    [Theory]
    [MemberData(nameof(Repeats))]
    public void Rounds_on_a_repeat(double repeat, int discs)
    {
        var disc = Shapes.Disc(17 * Inch, 60);
        var across = (long)(repeat * Inch);
        KeepsItsSteps(
            new StripProblem
            {
                Width = (long)(54 * Inch),
                Repeat = new RepeatLattice(across, across, 0),
                Pieces =
                [
                    disc with
                    {
                        Quantity = discs,
                        Alignment = new Alignment(((long)(27 * Inch) - disc.Width / 2) % across, 0),
                    },
                    new NestingPiece
                    {
                        Width = (long)(52 * Inch),
                        Length = (long)(4 * Inch),
                        Quantity = discs / 2,
                    },
                ],
            }
        );
    }

    [Theory]
    [InlineData(300)]
    [InlineData(2_000)]
    public void Hundreds_of_discs_alone_beside_strips_and_each_of_another_size(int discs)
    {
        var disc = Shapes.Disc(8 * Inch, 40) with { Quantity = discs };
        var strip = new NestingPiece
        {
            Width = (long)(30 * Inch),
            Length = (long)(3 * Inch),
            Quantity = discs / 4,
        };
        KeepsItsSteps(Strip(disc));
        KeepsItsSteps(Strip(disc, strip));
        KeepsItsSteps(Strip([.. Enumerable.Range(0, discs / 4).Select(number => Shapes.Disc((4 + 0.01 * number) * Inch, 40))]));
    }

    [Theory]
    [InlineData(60)]
    [InlineData(300)]
    public void Jagged_outlines(int corners) =>
        KeepsItsSteps(
            Strip([
                .. Enumerable
                    .Range(1, 8)
                    .Select(number =>
                        Shapes.Star([.. Enumerable.Range(1, corners).Select(corner => 100_000 + number * 7_919 * corner % 60_000)]) with
                        {
                            Quantity = 3,
                            Rotations = Rotations.QuarterTurns,
                        }
                    ),
            ])
        );

    private static StripProblem Strip(params NestingPiece[] pieces) => new() { Width = (long)(54 * Inch), Pieces = [.. pieces] };

    private static void KeepsItsSteps(StripProblem problem)
    {
        using var limit = new CancellationTokenSource(FarTooLong);
        var copies = problem.Pieces.Sum(piece => piece.Quantity);
        var floor = Nester.OnePass(problem with { Pieces = [.. problem.Pieces.Select(piece => piece with { Outline = [] })] });
        var steps = OutlineSteps.For(Effort.Quick, copies);
        var layout = OutlineKernel.Search(problem, floor, steps, limit.Token);

        // What is begun is finished: an exact test of all pairs, or a no-fit polygon.
        Assert.InRange(layout.Steps - floor.Steps, 0, steps + Math.Max(steps / 4, (long)copies * copies / 2));
        Assert.True(layout.Length <= floor.Length);
    }
}
