using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract;
using CushionService.Desk;
using CushionService.Engine.Specifications;

namespace CushionService.Streaming;

/// <summary>Quotes any number of orders, one after another: the room behind both doors' streams. An order that cannot be quoted is refused
/// in its place and does not end the stream.</summary>
internal sealed partial class QuoteStream(OrderDispatcher orders, ILogger<QuoteStream> log)
{
    /// <summary>Quotes every order, in order.</summary>
    /// <param name="caller">Who sends them.</param>
    /// <param name="received">The orders as a door reads them.</param>
    /// <param name="write">Writes an answer; told whether the next is ready too.</param>
    /// <param name="cancellation">The caller gave up.</param>
    public Task AnswerAsync(
        Caller caller,
        IAsyncEnumerable<NumberedOrder> received,
        Func<NumberedQuote, bool, CancellationToken, ValueTask> write,
        CancellationToken cancellation
    ) => OrderedWindow.AnswerAsync(received, (order, ending) => QuoteAsync(caller, order, ending), write, cancellation);

    private async Task<NumberedQuote> QuoteAsync(Caller caller, NumberedOrder order, CancellationToken cancellation)
    {
        if (order.Order is not { } reading)
        {
            return Refused(order.Number, "order-too-long", $"An order may have {Limits.OrderBytes} bytes at most.");
        }

        try
        {
            return new NumberedQuote(order.Number, await orders.HandleAsync(caller, reading, Purposes.Quote, cancellation, inTurn: true));
        }
        catch (Exception fault) when (!cancellation.IsCancellationRequested)
        {
            LogFault(log, fault, order.Number);
            return Refused(order.Number, "internal", "The service failed; the fault is not the order's.");
        }
    }

    private static NumberedQuote Refused(long number, string code, string detail) =>
        new(number, new Refusal([new Violation("", code, detail)]));

    [LoggerMessage(LogLevel.Error, "Order {Number} of a stream failed")]
    private static partial void LogFault(ILogger log, Exception fault, long number);
}
