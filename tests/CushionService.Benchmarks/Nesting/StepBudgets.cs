using System.Globalization;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Benchmarks.Nesting;

/// <summary>Whether each effort keeps its time on orders made to be hard: repeats from a quarter inch up, half drops, thousands of copies,
/// strips that everything barely fits. Prints the slowest of each effort. Times are of the processor.</summary>
internal static class StepBudgets
{
    private const int Orders = 2_000;
    private const int Shown = 5;

    public static void Print(FamilyRun run)
    {
        Console.WriteLine($"budgets: {Orders} generated orders with repeats, 1 to 6 000 copies, on fabric 54 in wide, every {run.Every}");
        foreach (var effort in run.Efforts.OfType<Effort>())
        {
            var times = new List<(double Milliseconds, string Order)>();
            for (var seed = 0; seed < Orders; seed += run.Every)
            {
                var problem = Problem(seed);
                var start = Environment.CpuUsage.TotalTime;
                var layout = Nester.Nest(problem, effort);
                double ms = (Environment.CpuUsage.TotalTime - start).TotalMilliseconds;
                int copies = problem.Pieces.Sum(piece => piece.Quantity);
                var lattice = problem.Repeat!;
                times.Add(
                    (
                        ms,
                        $"order {seed}: {copies} copies, repeat {lattice.Width} x {lattice.Length}, drop "
                            + $"{lattice.Drop}, {layout.Steps} steps"
                    )
                );
            }

            Console.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"  {effort}: mean {times.Average(time => time.Milliseconds):F1} ms; slowest:")
            );
            foreach (var (ms, order) in times.OrderByDescending(time => time.Milliseconds).Take(Shown))
            {
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    {ms, 9:F1} ms  {order}"));
            }
        }
    }

    /// <summary>A generated order, in quarter inches.</summary>
    public static StripProblem Problem(int seed)
    {
        var random = new Random(seed);
        long across = seed % 4 == 0 ? 0 : Math.Max(1, (long)Math.Pow(120, random.NextDouble()));
        long along = Math.Max(1, (long)Math.Pow(120, random.NextDouble()));
        int kinds = random.Next(1, 41);
        double most = Math.Pow(6_000, random.NextDouble());
        var pieces = new List<NestingPiece>();
        for (var kind = 0; kind < kinds; kind++)
        {
            bool aligned = random.Next(3) > 0;
            long width = random.Next(2, 105);
            var phase = new Alignment(random.Next((int)Math.Clamp(across, 1, 216 - width)), random.Next((int)along));
            pieces.Add(
                new NestingPiece
                {
                    Width = width,
                    Length = random.Next(2, 216),
                    Quantity = 1 + (int)(random.NextDouble() * 2 * most / kinds),
                    Alignment = aligned ? phase : null,
                    Rotations = !aligned && random.Next(2) == 0 ? Rotations.QuarterTurns : Rotations.None,
                }
            );
        }

        return new StripProblem
        {
            Width = 216,
            Pieces = [.. pieces],
            Repeat = new RepeatLattice(across, along, across > 0 && seed % 2 == 0 ? along / 2 : 0),
        };
    }
}
