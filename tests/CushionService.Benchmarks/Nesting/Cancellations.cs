using System.Diagnostics;
using System.Globalization;
using CushionService.Benchmarks.Outlines;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Benchmarks.Nesting;

/// <summary>How long a thorough search goes on once its caller has cancelled, at many moments of it. The promise is 20 ms on a processor
/// that is free.</summary>
internal static class Cancellations
{
    private const int Moments = 24;
    private const int LastMoment = 1_500;
    private static readonly SaleLadder EighthYards = new(0, 18, 1, 1);

    public static void Print()
    {
        Console.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"cancellation: thorough, cancelled at {Moments} moments within {LastMoment} ms")
        );
        Console.WriteLine("  order                          median ms     most ms  of");
        foreach (int count in new[] { 16, 20, 60, 250, 1_000, 5_000, 10_000 })
        {
            foreach (var turns in new[] { Rotations.None, Rotations.QuarterTurns })
            {
                var problem = LargeOrders.Problem(count, turns) with { Sale = EighthYards };
                Print($"{count} rectangles, {turns}", token => Nester.Nest(problem, Effort.Thorough, token));
            }
        }

        var sheets = new SheetProblem
        {
            Pieces = LargeOrders.Problem(200, Rotations.QuarterTurns).Pieces,
            Sheets = [new StockSheet(216, 216, null, 10), new StockSheet(130, 180, 5, 4)],
        };
        Print("200 rectangles on sheets", token => Nester.Nest(sheets, Effort.Thorough, token));
        var repeats = RepeatOrders.Problem(1);
        Print("an order with repeats", token => Nester.Nest(repeats, Effort.Thorough, token));
        var cushions = CushionOrders.Generate(20).MaxBy(order => order.Pieces.Sum(piece => piece.Quantity))!;
        Print("a cushion order of outlines", token => Nester.Nest(cushions, Effort.Thorough, token));
        var discs = new StripProblem { Width = 900, Pieces = [OutlinePieces.Disc(70, 120), OutlinePieces.Tee(120, 100, 20, 30, 40)] };
        Print("120 discs and 40 tees", token => Nester.Nest(discs, Effort.Thorough, token));
    }

    private static void Print(string order, Action<CancellationToken> search)
    {
        // Once without measuring, so that nothing is compiled while it counts.
        After(search, LastMoment);
        List<double> delays =
        [
            .. Enumerable.Range(1, Moments).Select(moment => After(search, moment * LastMoment / Moments)).OfType<double>().Order(),
        ];
        Console.WriteLine(
            delays.Count == 0
                ? $"  {order, -30} was done before the first moment"
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"  {order, -30} {delays[delays.Count / 2], 9:F2} {delays[^1], 11:F2}  {delays.Count}"
                )
        );
    }

    /// <summary>Milliseconds from cancelling to the search's end; null when it was done before.</summary>
    private static double? After(Action<CancellationToken> search, int milliseconds)
    {
        using CancellationTokenSource caller = new();
        long given = 0;
        Thread clock = new(() =>
        {
            Thread.Sleep(milliseconds);
            Volatile.Write(ref given, Stopwatch.GetTimestamp());
            caller.Cancel();
        });
        clock.Start();
        double? delay = null;
        try
        {
            search(caller.Token);
        }
        catch (OperationCanceledException)
        {
            delay = Stopwatch.GetElapsedTime(Volatile.Read(ref given)).TotalMilliseconds;
        }

        clock.Join();
        return delay;
    }
}
