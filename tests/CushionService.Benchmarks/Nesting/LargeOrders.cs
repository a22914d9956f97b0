using System.Diagnostics;
using System.Globalization;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Benchmarks.Nesting;

/// <summary>Generated orders of many different rectangles: the gap over the area bound, and how one pass grows.</summary>
internal static class LargeOrders
{
    private const int LongestSide = 120;
    private const int LongestOfMany = 200;
    private const int StripWidth = 216;

    public static void Print(FamilyRun run)
    {
        Console.WriteLine(
            "large: different rectangles of sides 2 1/2 to 30 in, in quarter inches, on fabric 54 in wide, over the area bound"
        );
        Console.WriteLine("  pieces  turns         effort         gap %        ms        steps");
        foreach (int count in new[] { 1_000, 5_000 })
        {
            foreach (var turns in run.Turns)
            {
                foreach (var effort in run.Efforts)
                {
                    // The first layout is what a page would see of that many: it is made twice, and the second counts.
                    _ = effort is null ? Timed(Problem(count, turns), null) : default;
                    var (layout, ms) = Timed(Problem(count, turns), effort);
                    long bound = layout.LowerBound;
                    Console.WriteLine(
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"  {count, 6}  {turns, -12}  {effort?.ToString() ?? "one pass", -9} "
                                + $"{100.0 * (layout.Length - bound) / bound, 9:F4} {ms, 9:F1} {layout.Steps, 12}"
                        )
                    );
                }
            }
        }
    }

    public static void PrintGrowth()
    {
        Console.WriteLine("growth: one pass and its audit, best of five");
        Console.WriteLine("  pieces         ms  us/(n log2 n)");
        foreach (int count in new[] { 100, 1_000, 10_000 })
        {
            double best = Enumerable.Range(0, 5).Min(_ => Timed(Problem(count, Rotations.QuarterTurns), null).Milliseconds);
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"  {count, 6}  {best, 9:F2}  {1000 * best / (count * Math.Log2(count)), 13:F4}"
                )
            );
        }
    }

    /// <summary>An order of that many different rectangles.</summary>
    public static StripProblem Problem(int count, Rotations turns)
    {
        var random = new Random(count);
        var sizes = new HashSet<(int, int)>();
        int longest = count <= 5_000 ? LongestSide : LongestOfMany;
        while (sizes.Count < count)
        {
            var (a, b) = (random.Next(10, longest + 1), random.Next(10, longest + 1));
            if (turns == Rotations.None || !sizes.Contains((b, a)))
            {
                sizes.Add((a, b));
            }
        }

        return new StripProblem
        {
            Width = StripWidth,
            Pieces =
            [
                .. sizes.Select(size => new NestingPiece
                {
                    Width = size.Item1,
                    Length = size.Item2,
                    Rotations = turns,
                }),
            ],
        };
    }

    private static (StripLayout Layout, double Milliseconds) Timed(StripProblem problem, Effort? effort)
    {
        long start = Stopwatch.GetTimestamp();
        var layout = effort is { } chosen ? Nester.Nest(problem, chosen) : Nester.OnePass(problem);
        return (layout, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
    }
}
