using System.Diagnostics;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Benchmarks.Outlines;

/// <summary>The verb <c>outlines-budget [effort] [words...]</c>: what every hard order takes at an effort, beside its bounding
/// boxes.</summary>
internal static class Budgets
{
    /// <summary>No order may take longer; what does is cancelled and said.</summary>
    private static readonly TimeSpan Most = TimeSpan.FromSeconds(10);

    public static void Run(IReadOnlyList<string> arguments)
    {
        var effort = Enum.Parse<Effort>(arguments.Count > 0 ? arguments[0] : "Quick", ignoreCase: true);
        foreach (
            var (name, problem) in HardOrders
                .All()
                .Where(order => arguments.Skip(1).All(word => order.Name.Contains(word, StringComparison.Ordinal)))
        )
        {
            using var boxLimit = new CancellationTokenSource(Most);
            var boxes = Timed(
                problem with
                {
                    Pieces = [.. problem.Pieces.Select(piece => piece with { Outline = [] })],
                },
                effort,
                boxLimit.Token
            );
            using var limit = new CancellationTokenSource(Most);
            var outlines = Timed(problem, effort, limit.Token);
            Console.WriteLine(
                $"{effort, -8} {name, -40} boxes {boxes.Milliseconds, 8:F0} ms {boxes.Layout?.Length, 12}   outlines "
                    + $"{outlines.Milliseconds, 8:F0} ms (processor {outlines.Processor, 8:F0}) "
                    + $"{outlines.Layout?.Length, 12} {outlines.Layout?.Steps, 14:N0} "
                    + $"steps{(outlines.Layout?.ProvenMinimal == true ? " proven" : "")}"
            );
        }
    }

    private static (StripLayout? Layout, double Milliseconds, double Processor) Timed(
        StripProblem problem,
        Effort effort,
        CancellationToken cancellation
    )
    {
        using var process = Process.GetCurrentProcess();
        var (before, clock) = (process.TotalProcessorTime, Stopwatch.StartNew());
        StripLayout? layout = null;
        try
        {
            layout = Nester.Nest(problem, effort, cancellation);
        }
        catch (OperationCanceledException)
        {
            // Said by the missing length.
        }

        process.Refresh();
        return (layout, clock.Elapsed.TotalMilliseconds, (process.TotalProcessorTime - before).TotalMilliseconds);
    }
}
