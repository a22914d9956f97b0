using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Tests.Orders.Covers;

namespace CushionService.LoadTests.Runs;

/// <summary>Quotes generated orders of every construction, outline, closure, edging, repeat, grain and unit at each effort that a page or
/// a shop asks for, and checks every quote as a master would.</summary>
/// <remarks>One order at a time. Processor time is compared with the effort's budget, so that what else runs on the machine does not
/// count. With a file, each figure is a line of it: a run that is begun again goes on behind its last number, and the summary is of all
/// that the file holds, so that slices add up.</remarks>
internal sealed class OrdersRun
{
    private const int Listed = 10;

    // What is over its budget is measured again, and the least counts: code is compiled, and memory is cleared, in the first call that
    // needs it.
    private const int Measurements = 3;

    private readonly string[] _efforts;
    private readonly string? _file;
    private readonly List<MeasuredQuote> _quotes = [];
    private int _faults;

    private OrdersRun(string? file, string[] efforts) => (_file, _efforts) = (file, efforts);

    /// <summary>Runs, and prints what failed, what was over its budget and the slowest.</summary>
    /// <param name="orders">How many orders.</param>
    /// <param name="first">The number of the first.</param>
    /// <param name="file">Where figures are kept; null for nowhere.</param>
    /// <param name="efforts">How hard each is searched: quick and standard unless others are named.</param>
    /// <returns>0 where nothing failed and nothing was over its budget.</returns>
    public static int Run(int orders, int first, string? file, params string[] efforts)
    {
        var run = new OrdersRun(file, efforts.Length == 0 ? ["quick", "standard"] : efforts);
        return run.All(orders, first);
    }

    /// <summary>Writes one order, to be sent by hand.</summary>
    public static int Show(int number)
    {
        JsonObject? order = CoverOrders.Order(number, "standard");
        Console.OutputEncoding = Encoding.UTF8;
        Console.WriteLine(order?.ToJsonString(new JsonSerializerOptions { WriteIndented = true }) ?? "none");
        return order is null ? 1 : 0;
    }

    private int All(int orders, int first)
    {
        Console.OutputEncoding = Encoding.UTF8;
        if (_file is not null && File.Exists(_file))
        {
            _quotes.AddRange(File.ReadLines(_file).Select(MeasuredQuote.Read));
        }

        HashSet<int> done = [.. _quotes.Select(quote => quote.Number)];
        int[] left = [.. Enumerable.Range(first, orders).Where(number => !done.Contains(number))];
        // Compiled before it is measured.
        for (int number = 0; number < 40 && left.Length > 0; number++)
        {
            _ = CoverOrders.Order(number, "quick") is { } order ? QuotedCover.Of(order) : null;
        }

        foreach (int number in left)
        {
            MeasuredQuote[] quotes = [.. _efforts.SelectMany(effort => Measured(number, effort))];
            _quotes.AddRange(quotes);
            // A number at a time, so that one that was broken off is measured again as a whole.
            if (_file is not null)
            {
                File.AppendAllLines(_file, quotes.Select(quote => quote.Line));
            }
        }

        MeasureAgain();
        return Print();
    }

    // Code is optimised while a run goes on: what was over its budget is measured once more when all of it is.
    private void MeasureAgain()
    {
        for (var i = 0; i < _quotes.Count; i++)
        {
            if (_quotes[i].IsOver && CoverOrders.Order(_quotes[i].Number, _quotes[i].Effort) is { } order)
            {
                _quotes[i] = Least(_quotes[i].Number, _quotes[i].Effort, order).Quote;
            }
        }
    }

    private IEnumerable<MeasuredQuote> Measured(int number, string effort)
    {
        if (CoverOrders.Order(number, effort) is not { } order)
        {
            return [new MeasuredQuote(number, "quote", effort, 0, 0, 0, 0, "", MeasuredQuote.None)];
        }

        try
        {
            (MeasuredQuote quote, QuotedCover cover) = Least(number, effort, order);
            foreach (string fault in CoverChecks.Faults(cover).Concat(CoverUse.Faults(cover)))
            {
                Fail(number, effort, $"{fault} ({cover.Name})");
            }

            return [quote];
        }
        catch (Exception fault)
        {
            Fail(number, effort, $"{fault.GetType().Name}: {fault.Message}");
            return [];
        }
    }

    private static (MeasuredQuote Quote, QuotedCover Cover) Least(int number, string effort, JsonObject order)
    {
        (MeasuredQuote Quote, QuotedCover Cover)? least = null;
        for (var i = 0; i < Measurements && least is not { Quote.IsOver: false }; i++)
        {
            (TimeSpan thread, TimeSpan process) = (ProcessorTime.OfThread, ProcessorTime.OfProcess);
            QuotedCover cover = QuotedCover.Of(order);
            double took = (ProcessorTime.OfThread - thread).TotalMilliseconds;
            if (least is null || took < least.Value.Quote.Thread)
            {
                var quote = new MeasuredQuote(
                    number,
                    "quote",
                    effort,
                    took,
                    (ProcessorTime.OfProcess - process).TotalMilliseconds,
                    cover.Quote.Drafting.Pieces.Sum(piece => piece.Quantity),
                    cover.Quote.Yardages.Sum(yardage => yardage.Layout.Steps) / 1e6,
                    string.Join('+', cover.Quote.Yardages.Select(yardage => yardage.Sold.Nanometres)),
                    cover.Name
                );
                least = (quote, cover);
            }
        }

        if (least!.Value.Quote.IsOver)
        {
            Console.WriteLine($"over: {least.Value.Quote}");
        }

        return least.Value;
    }

    private void Fail(int number, string effort, string fault)
    {
        _faults++;
        Console.WriteLine($"{number} {effort}: {fault}");
    }

    private int Print()
    {
        MeasuredQuote[] sound = [.. _quotes.Where(quote => quote.Name != MeasuredQuote.None)];
        int over = sound.Count(quote => quote.IsOver);
        Console.WriteLine(
            $"{_quotes.DistinctBy(quote => quote.Number).Count()} numbers, {sound.Length} quotes ({_quotes.Count - sound.Length} without a "
                + $"sound order): {_faults} faults in this run, {over} over their budget"
        );
        foreach (var same in sound.GroupBy(quote => (quote.Call, quote.Effort)))
        {
            double[] took = [.. same.Select(quote => quote.Thread).Order()];
            Console.WriteLine(
                $"{same.Key.Call} {same.Key.Effort}: median {took[took.Length / 2]:0} ms, 99 % {took[took.Length * 99 / 100]:0} ms, "
                    + $"most {took[^1]:0} ms of {same.First().Budget:0} ms"
            );
            foreach (MeasuredQuote slow in same.OrderByDescending(quote => quote.Thread).Take(Listed))
            {
                Console.WriteLine(slow);
            }
        }

        return _faults == 0 && over == 0 ? 0 : 1;
    }
}
