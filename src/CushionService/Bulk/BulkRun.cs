using System.IO.Pipelines;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Rest;
using CushionService.Streaming;

namespace CushionService.Bulk;

/// <summary>One run over a file of orders: passes over those that have their answer already, and adds the answers to the others in
/// their order.</summary>
/// <param name="desk">Quotes orders here.</param>
/// <param name="answers">Gets the answers.</param>
internal sealed class BulkRun(BulkDesk desk, AnswerFile answers)
{
    private const string Table = ".csv";

    // Orders with a queue at the same time; they wait there and take no processor here.
    private const int Underway = 256;

    /// <summary>Quotes the orders in this process, on every processor.</summary>
    /// <param name="path">The file of orders.</param>
    /// <param name="stop">Ends the run; answers that are written stay.</param>
    public Task QuoteHereAsync(string path, CancellationToken stop) => QuoteAsync(path, Here, Environment.ProcessorCount, stop);

    /// <summary>Has the orders quoted by the workers of a queue.</summary>
    /// <param name="path">The file of orders.</param>
    /// <param name="url">The address of the NATS server.</param>
    /// <param name="stop">Ends the run.</param>
    public async Task QuoteThereAsync(string path, string url, CancellationToken stop)
    {
        await using QueueClient queue = await QueueClient.OpenAsync(url, stop);
        await QuoteAsync(
            path,
            // What cannot be read is known here.
            (order, token) =>
                order.Order is { Order: { } whole, Violations.Count: 0 } ? queue.AskAsync(order.Number, whole, token) : Here(order, token),
            Underway,
            stop
        );
    }

    private async Task QuoteAsync(
        string path,
        Func<NumberedOrder, CancellationToken, Task<BulkLine>> answer,
        int workers,
        CancellationToken stop
    )
    {
        await using FileStream file = File.OpenRead(path);
        IAsyncEnumerable<NumberedOrder> orders = path.EndsWith(Table, StringComparison.OrdinalIgnoreCase)
            ? CsvOrders.ReadAsync(new StreamReader(file))
            : OrderLines.ReadAsync(PipeReader.Create(file), stop);
        await OrderedWindow.AnswerAsync(
            After(orders, answers.Lines),
            answer,
            (line, _, token) => answers.AddAsync(line.Text, line.IsProblem, token),
            stop,
            workers
        );
    }

    private Task<BulkLine> Here(NumberedOrder order, CancellationToken stop)
    {
        Outcome<QuoteAnswer> outcome = desk.Quote(order.Order, stop);
        string trace = $"line-{order.Number}";
        return Task.FromResult(
            new BulkLine(BulkText.Of(outcome, order.Order?.Language ?? default, trace, order.Number), !outcome.Answered)
        );
    }

    private static async IAsyncEnumerable<NumberedOrder> After(IAsyncEnumerable<NumberedOrder> orders, long done)
    {
        await foreach (NumberedOrder order in orders)
        {
            if (done-- <= 0)
            {
                yield return order;
            }
        }
    }
}
