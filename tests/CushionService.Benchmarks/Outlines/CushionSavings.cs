using System.Diagnostics;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Benchmarks.Outlines;

/// <summary>The verb <c>outlines-cushions</c>: how much fabric true outlines save on 300 invented orders, and what it costs,
/// beside the same pieces laid as their bounding boxes. Every layout is audited and shown to NetTopologySuite.</summary>
internal static class CushionSavings
{
    private const int Orders = 300;

    public static void Run()
    {
        using var process = Process.GetCurrentProcess();
        var orders = CushionOrders.Generate(Orders).ToList();
        foreach (var effort in new[] { Effort.Quick, Effort.Standard })
        {
            foreach (var order in orders.Take(50))
            {
                Nester.Nest(order, Effort.Quick);
            }

            var (times, processor, boxTimes) = (new List<double>(), new List<double>(), new List<double>());
            var (used, sold, shorter, longer, proven) = (0.0, 0.0, 0, 0, 0);
            foreach (var order in orders)
            {
                var clock = Stopwatch.StartNew();
                var boxes = Nester.Nest(order with { Pieces = [.. order.Pieces.Select(piece => piece with { Outline = [] })] }, effort);
                boxTimes.Add(clock.Elapsed.TotalMilliseconds);
                process.Refresh();
                var before = process.TotalProcessorTime;
                clock.Restart();
                var outlines = Nester.Nest(order, effort);
                times.Add(clock.Elapsed.TotalMilliseconds);
                process.Refresh();
                processor.Add((process.TotalProcessorTime - before).TotalMilliseconds);
                OverlapOracle.Check(order, outlines);
                used += 1 - (double)outlines.Length / boxes.Length;
                var (rung, boxRung) = (order.Sale.RungFor(outlines.Length), order.Sale.RungFor(boxes.Length));
                sold += 1 - (double)rung / boxRung;
                shorter += rung < boxRung ? 1 : 0;
                proven += outlines.ProvenMinimal ? 1 : 0;
                longer += rung > boxRung || outlines.Length > boxes.Length ? 1 : 0;
            }

            Console.WriteLine(
                $"{effort, -8} {Orders} orders, {orders.Average(order => order.Pieces.Sum(piece => piece.Quantity)):F1} pieces: "
                    + $"length saved {100 * used / Orders:F2} %, fabric bought saved {100 * sold / Orders:F2} %, "
                    + $"fewer rungs {shorter}, worse {longer}, proven minimal {proven}; "
                    + $"median {Median(times):F2} ms, nine in ten {Percentile(times, 0.9):F2} ms, processor median "
                    + $"{Median(processor):F2} ms; bounding boxes {Median(boxTimes):F2} ms"
            );
        }
    }

    private static double Median(List<double> times) => Percentile(times, 0.5);

    private static double Percentile(List<double> times, double share) => times.Order().ElementAt((int)(share * (times.Count - 1)));
}
