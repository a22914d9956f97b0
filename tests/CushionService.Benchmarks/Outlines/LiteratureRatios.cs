using System.Diagnostics;
using CushionService.Nesting;
using CushionService.Nesting.Outlines;
using CushionService.Nesting.Solving;

namespace CushionService.Benchmarks.Outlines;

/// <summary>The verb <c>outlines [instance, effort or number of seeds...]</c>: length over the best known, beside that of the bounding
/// boxes. Without an effort named, the three that a single order may ask for.</summary>
internal static class LiteratureRatios
{
    public static void Run(IReadOnlyList<string> arguments)
    {
        if (OutlineInstances.Read() is not { } instances)
        {
            Console.WriteLine("outlines: skipped, the open data are absent (set CUSHION_DATA to their folder)");
            return;
        }

        var efforts = Enum.GetValues<Effort>()
            .Where(effort => arguments.Contains(effort.ToString(), StringComparer.OrdinalIgnoreCase))
            .ToList();
        var chosen = instances.Where(instance => arguments.Contains(instance.Name)).ToList();
        chosen = chosen.Count > 0 ? chosen : [.. instances];
        foreach (var instance in chosen)
        {
            Nester.Nest(instance.Problem, Effort.Quick);
        }

        var seeds = arguments.Select(argument => int.TryParse(argument, out var number) ? number : 0).Append(1).Max();
        foreach (var effort in efforts.Count > 0 ? efforts : [Effort.Quick, Effort.Standard, Effort.Thorough])
        {
            var over = Enumerable
                .Range(0, seeds)
                .Select(seed => chosen.Select(instance => Over(instance, effort, seed)).ToList().Average())
                .ToList();
            Console.WriteLine(
                $"{effort}: mean {over.Average():F2} % over the best known; by seed {string.Join(", ", over.Select(mean => $"{mean:F2}"))}"
            );
        }
    }

    private static double Over(OutlineInstance instance, Effort effort, int seed)
    {
        var boxes = Nester.Nest(
            instance.Problem with
            {
                Pieces = [.. instance.Problem.Pieces.Select(piece => piece with { Outline = [] })],
            },
            Effort.Quick
        );
        using var process = Process.GetCurrentProcess();
        var (clock, before) = (Stopwatch.StartNew(), process.TotalProcessorTime);
        var layout = seed == 0 ? Nester.Nest(instance.Problem, effort) : Seeded(instance.Problem, effort, seed);
        var time = clock.Elapsed;
        process.Refresh();
        var processor = process.TotalProcessorTime - before;
        var shared = OverlapOracle.Check(instance.Problem, layout);
        var over = 100 * (layout.Length / instance.BestKnown - 1);
        Console.WriteLine(
            $"{effort, -9} {instance.Name, -8} {layout.Placements.Length, 3} pieces  over best known {over, 6:F2} %  "
                + $"bounding boxes {100 * (boxes.Length / instance.BestKnown - 1), 6:F2} %"
                + $"  steps {layout.Steps, 11:N0}  {time.TotalMilliseconds, 9:F1} ms, processor {processor.TotalMilliseconds, 9:F1} ms"
                + $"  audited, shared by NetTopologySuite's account {shared:F3} square units"
        );
        return over;
    }

    /// <summary>As the kernel does it, with other chances.</summary>
    private static StripLayout Seeded(StripProblem problem, Effort effort, int seed)
    {
        var floor = Nester.Nest(
            problem with
            {
                Pieces = [.. problem.Pieces.Select(piece => piece with { Outline = [] })],
            },
            effort == Effort.Quick ? Effort.Quick : Effort.Standard
        );
        var steps = OutlineSteps.For(effort, floor.Placements.Length);
        return OutlineKernel.Search(problem, floor, steps, CancellationToken.None, 2, 7919 + 104_729 * (ulong)seed);
    }
}
