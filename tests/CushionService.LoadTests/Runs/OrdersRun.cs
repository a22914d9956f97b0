using System.Diagnostics;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Tests.Orders.Covers;

namespace CushionService.LoadTests.Runs;

/// <summary>Quotes generated orders of every construction, outline, closure, edging, repeat, grain and unit at each effort that a page or
/// a shop asks for, and checks every quote as a master would.</summary>
/// <remarks>One order at a time on one thread. Processor time is compared with the effort's budget, so that what else runs on the machine
/// does not count.</remarks>
internal static class OrdersRun
{
    private const int Listed = 10;

    private static readonly (string Effort, double Milliseconds)[] Budgets = [("quick", 100), ("standard", 1000)];

    /// <summary>Runs, and prints what failed, what was over its budget and the slowest.</summary>
    /// <param name="orders">How many orders.</param>
    /// <param name="first">The number of the first.</param>
    /// <returns>0 where nothing failed and nothing was over its budget.</returns>
    public static int Run(int orders, int first)
    {
        // Compiled before it is measured.
        for (int number = 0; number < 40; number++)
        {
            _ = CoverOrders.Order(number, "quick") is { } order ? QuotedCover.Of(order) : null;
        }

        List<Timed> times = [];
        int unsound = 0,
            faulty = 0;
        for (int number = first; number < first + orders; number++)
        {
            foreach ((string effort, double budget) in Budgets)
            {
                if (CoverOrders.Order(number, effort) is not { } order)
                {
                    unsound++;
                    continue;
                }

                try
                {
                    TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
                    QuotedCover cover = QuotedCover.Of(order);
                    double took = (Process.GetCurrentProcess().TotalProcessorTime - before).TotalMilliseconds;
                    times.Add(
                        new Timed(
                            number,
                            effort,
                            took,
                            budget,
                            cover.Name,
                            cover.Quote.Drafting.Pieces.Sum(piece => piece.Quantity),
                            cover.Quote.Yardages.Sum(yardage => yardage.Layout.Steps) / 1e6
                        )
                    );
                    foreach (string fault in CoverChecks.Faults(cover).Concat(CoverUse.Faults(cover)))
                    {
                        faulty++;
                        Console.WriteLine($"{number} {effort}: {fault} ({cover.Name})");
                    }
                }
                catch (Exception fault)
                {
                    faulty++;
                    Console.WriteLine($"{number} {effort}: {fault.GetType().Name}: {fault.Message}");
                }
            }
        }

        return Print(orders, times, unsound, faulty);
    }

    /// <summary>Writes one order, to be sent by hand.</summary>
    public static int Show(int number)
    {
        JsonObject? order = CoverOrders.Order(number, "standard");
        Console.OutputEncoding = Encoding.UTF8;
        Console.WriteLine(order?.ToJsonString(new JsonSerializerOptions { WriteIndented = true }) ?? "none");
        return order is null ? 1 : 0;
    }

    private static int Print(int orders, List<Timed> times, int unsound, int faulty)
    {
        int over = times.Count(time => time.Took > time.Budget);
        Console.WriteLine(
            $"{orders} numbers, {times.Count} quotes ({unsound} without a sound order): {faulty} faults, {over} over their budget"
        );
        foreach ((string effort, _) in Budgets)
        {
            double[] took = [.. times.Where(time => time.Effort == effort).Select(time => time.Took).Order()];
            if (took.Length > 0)
            {
                Console.WriteLine(
                    $"{effort}: median {took[took.Length / 2]:0} ms, 99 % {took[took.Length * 99 / 100]:0} ms, most {took[^1]:0} ms"
                );
            }

            foreach (Timed slow in times.Where(time => time.Effort == effort).OrderByDescending(time => time.Took).Take(Listed))
            {
                Console.WriteLine(
                    $"{slow.Took, 8:0} ms  {slow.Steps, 5:0} M steps  {slow.Pieces, 4} pieces  {slow.Number, 6}  {slow.Name}"
                );
            }
        }

        return faulty == 0 && over == 0 ? 0 : 1;
    }

    private sealed record Timed(int Number, string Effort, double Took, double Budget, string Name, int Pieces, double Steps);
}
