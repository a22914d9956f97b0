using System.Diagnostics;
using CushionService.Nesting;
using CushionService.Nesting.Outlines.NoFit;
using CushionService.Nesting.Outlines.Placing;

namespace CushionService.Benchmarks.Outlines;

/// <summary>The verb <c>outlines-pairs</c>: what it takes to make the no-fit polygons, in time and bytes, beside what is counted for
/// it.</summary>
internal static class PairCosts
{
    public static void Run()
    {
        foreach (var instance in OutlineInstances.Read() ?? [])
        {
            Measure(instance.Name, instance.Problem);
        }

        foreach (
            var (name, problem) in HardOrders
                .All()
                .Where(order =>
                    order.Name.Contains("stars", StringComparison.Ordinal) || order.Name.StartsWith("100 ", StringComparison.Ordinal)
                )
        )
        {
            Measure(name, problem);
        }
    }

    private static void Measure(string name, StripProblem problem)
    {
        var copies = new Copies(problem, CancellationToken.None);
        var (before, clock) = (GC.GetAllocatedBytesForCurrentThread(), Stopwatch.StartNew());
        var pairs = 0;
        var most = 0.0;
        var segments = new List<ConvolutionSegment>();
        long sum = 0,
            squares = 0;
        for (var one = 0; one < copies.Book.Count; one++)
        {
            for (var other = one; other < copies.Book.Count && clock.ElapsedMilliseconds < 20_000; other++, pairs++)
            {
                var start = clock.Elapsed.TotalMilliseconds;
                copies.Book.Pair(one, other);
                most = Math.Max(most, clock.Elapsed.TotalMilliseconds - start);
                Convolution.Trace(copies.Book[one], copies.Book[other], segments);
                sum += segments.Count;
                squares += (long)segments.Count * segments.Count;
            }
        }

        Console.WriteLine(
            $"{name, -40} {copies.Book.Count, 5} shapes {pairs, 8} pairs {clock.Elapsed.TotalMilliseconds, 8:F1} ms, "
                + $"most for one {most, 6:F1} ms, segments {(double)sum / pairs, 7:F0} a pair, squares "
                + $"{(double)squares / pairs, 10:F0}, {clock.Elapsed.TotalNanoseconds / 8 / squares, 6:F1} steps a "
                + $"square, {(GC.GetAllocatedBytesForCurrentThread() - before) / sum, 5} bytes a segment"
        );
    }
}
