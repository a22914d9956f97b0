using CushionService.Nesting.Solving;
using Google.OrTools.Sat;
using Xunit.Abstractions;

namespace CushionService.Nesting.Tests.Rectangles;

/// <summary>CP-SAT as an independent oracle. A case that it does not decide in its time is counted as undecided, not as a pass.</summary>
public sealed class ExactSolverFacts(ITestOutputHelper output)
{
    private const int Cases = 200;

    [Fact]
    public void No_bound_exceeds_and_no_layout_beats_an_optimum_that_CP_SAT_proves()
    {
        var random = new Random(20250);
        var (decided, proven) = (0, 0);
        for (var index = 0; index < Cases; index++)
        {
            var problem = Problem(random, index % 2 == 0 ? Rotations.None : Rotations.QuarterTurns);
            var layout = Nester.Nest(problem, Effort.Standard);
            if (Optimum(problem, layout.Length) is not { } optimum)
            {
                continue;
            }

            decided++;
            proven += layout.ProvenMinimal ? 1 : 0;
            Assert.True(layout.LowerBound <= optimum, $"case {index}: bound {layout.LowerBound}, optimum {optimum}, by {layout.Proof}");
            Assert.True(layout.Length >= optimum, $"case {index}: length {layout.Length}, optimum {optimum}");
            Assert.True(
                !layout.ProvenMinimal || layout.Length == optimum,
                $"case {index}: {layout.Length} called minimal by {layout.Proof}, optimum {optimum}"
            );
        }

        output.WriteLine($"{decided} of {Cases} decided by CP-SAT, {Cases - decided} undecided; {proven} of them proven by us");
        Assert.True(decided >= Cases * 3 / 4, $"CP-SAT decided only {decided} of {Cases}");
    }

    private static StripProblem Problem(Random random, Rotations turns)
    {
        long width = random.Next(12, 30);
        return new StripProblem
        {
            Width = width,
            Pieces =
            [
                .. Enumerable
                    .Range(0, random.Next(2, 5))
                    .Select(_ => new NestingPiece
                    {
                        Width = random.Next(2, (int)width),
                        Length = random.Next(2, 12),
                        Quantity = random.Next(1, 3),
                        Rotations = turns,
                    }),
            ],
        };
    }

    private static long? Optimum(StripProblem problem, long atMost)
    {
        var model = new CpModel();
        var length = model.NewIntVar(0, atMost, "length");
        var plane = model.AddNoOverlap2D();
        foreach (var piece in problem.Pieces)
        {
            for (var copy = 0; copy < piece.Quantity; copy++)
            {
                var turned = model.NewBoolVar("turned");
                if (piece.Rotations != Rotations.QuarterTurns)
                {
                    model.Add(turned == 0);
                }

                var across = piece.Width + (piece.Length - piece.Width) * turned;
                var along = piece.Length + (piece.Width - piece.Length) * turned;
                var x = model.NewIntVar(0, problem.Width, "x");
                var y = model.NewIntVar(0, atMost, "y");
                var right = model.NewIntVar(0, problem.Width, "right");
                var upper = model.NewIntVar(0, atMost, "upper");
                plane.AddRectangle(model.NewIntervalVar(x, across, right, "across"), model.NewIntervalVar(y, along, upper, "along"));
                model.Add(length >= upper);
            }
        }

        model.Minimize(length);
        var solver = new CpSolver { StringParameters = "max_time_in_seconds:2 num_workers:1" };
        return solver.Solve(model) == CpSolverStatus.Optimal ? (long)solver.ObjectiveValue : null;
    }
}
