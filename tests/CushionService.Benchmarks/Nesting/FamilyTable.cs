using System.Globalization;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Benchmarks.Nesting;

/// <summary>Runs one family at each turning rule and effort and prints a row for each, beside the one-pass floor. Times are of the
/// processor, which other work on the machine disturbs little.</summary>
internal static class FamilyTable
{
    public static void Print(string family, IReadOnlyList<OpenInstance> instances, SaleLadder sale, FamilyRun run)
    {
        instances = run.Chosen(instances);
        if (instances.Count == 0)
        {
            Console.WriteLine($"{family}: no instance is chosen");
            return;
        }

        Console.WriteLine(
            $"{family}: {instances.Count} instances of {instances.Min(i => i.Rectangles)} to {instances.Max(i => i.Rectangles)} rectangles"
        );
        Console.WriteLine("  turns        effort     mean gap %  at optimum  proven        mean ms   max ms   mean steps");
        foreach (var turns in run.Turns)
        {
            foreach (var effort in run.Efforts)
            {
                Row(instances, sale, turns, effort, run.Verbose);
            }
        }
    }

    private static void Row(IReadOnlyList<OpenInstance> instances, SaleLadder sale, Rotations turns, Effort? effort, bool verbose)
    {
        var (gap, best, proven, steps, total, longest) = (0.0, 0, 0, 0L, 0.0, 0.0);
        foreach (var instance in instances)
        {
            var problem = Problem(instance, turns, sale);
            Lay(problem, null);
            var start = Environment.CpuUsage.TotalTime;
            var layout = Lay(problem, effort);
            double ms = (Environment.CpuUsage.TotalTime - start).TotalMilliseconds;
            long target = Target(instance, turns);
            (long sold, long soldTarget) = (sale.Reach(sale.RungFor(layout.Length)), sale.Reach(sale.RungFor(target)));
            gap += 100.0 * (sold - soldTarget) / soldTarget;
            best += sold <= soldTarget ? 1 : 0;
            proven += layout.ProvenMinimal ? 1 : 0;
            steps += layout.Steps;
            total += ms;
            longest = Math.Max(longest, ms);
            if (verbose)
            {
                Console.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"    {instance.Name, -18} n {instance.Rectangles, 4} target {target, 6} length "
                            + $"{layout.Length, 6} bound {layout.LowerBound, 6} {layout.Proof, -12} {ms, 9:F2} ms "
                            + $"{layout.Steps, 12}"
                    )
                );
            }
        }

        int n = instances.Count;
        string name = effort?.ToString().ToLowerInvariant() ?? "one pass";
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"  {turns, -12} {name, -9} {gap / n, 11:F3}  {best, 4} of {n, -4} {proven, 4} "
                    + $"({100.0 * proven / n, 5:F1} %) {total / n, 9:F3} {longest, 8:F1} {steps / n, 12}"
            )
        );
    }

    private static StripLayout Lay(StripProblem problem, Effort? effort) =>
        effort is { } chosen ? Nester.Nest(problem, chosen) : Nester.OnePass(problem);

    private static StripProblem Problem(OpenInstance instance, Rotations turns, SaleLadder sale) =>
        new()
        {
            Width = instance.StripWidth,
            Sale = sale,
            Pieces =
            [
                .. instance.Items.Select(
                    (item, index) =>
                        new NestingPiece
                        {
                            // Where turns are allowed, every other piece is given turned.
                            Width = turns == Rotations.QuarterTurns && index % 2 == 1 ? item.H : item.W,
                            Length = turns == Rotations.QuarterTurns && index % 2 == 1 ? item.W : item.H,
                            Quantity = item.N,
                            Rotations = turns,
                        }
                ),
            ],
        };

    /// <summary>The optimum for the turning rule where the data know it, else the best known without turns, else the area bound (so
    /// that a gap is never flattered).</summary>
    private static long Target(OpenInstance instance, Rotations turns) =>
        turns == Rotations.None ? instance.Optimal ?? instance.BestKnown ?? instance.LowerBound
        : instance.OptimalFor == "rotation and fixed" ? instance.Optimal ?? instance.LowerBound
        : instance.LowerBound;
}
