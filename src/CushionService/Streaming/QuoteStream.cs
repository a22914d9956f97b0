using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Desk;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Rejections;

namespace CushionService.Streaming;

/// <summary>Quotes any number of orders, one after another, for the streams of REST and gRPC. An order that cannot be
/// quoted is refused in its place and does not end the stream.</summary>
/// <param name="orders">Answers each order in its turn.</param>
/// <param name="log">Gets what failed by a fault of ours; the caller gets only that it failed, and the trace to quote.</param>
internal sealed class QuoteStream(OrderDispatcher orders, ILogger<QuoteStream> log)
{
    /// <summary>Quotes every order, in order, until the caller sends no more.</summary>
    /// <param name="caller">Who sends them.</param>
    /// <param name="traceId">Names the stream in the log, for orders that fail by a fault of ours.</param>
    /// <param name="language">The language of who reads the quotes.</param>
    /// <param name="received">The orders as they are read; the next is read only when there is room for it.</param>
    /// <param name="write">Writes an answer. The flag says that the next is ready too, so that the answer need not be
    /// flushed yet.</param>
    /// <param name="cancellation">The caller's: ends the stream.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    /// <exception cref="IOException">The connection was lost while an order was read or an answer written.</exception>
    public Task AnswerAsync(
        Caller caller,
        string traceId,
        Language language,
        IAsyncEnumerable<NumberedOrder> received,
        Func<NumberedQuote, bool, CancellationToken, ValueTask> write,
        CancellationToken cancellation
    ) => OrderedWindow.AnswerAsync(received, (order, token) => QuoteAsync(caller, traceId, language, order, token), write, cancellation);

    private async Task<NumberedQuote> QuoteAsync(
        Caller caller,
        string traceId,
        Language language,
        NumberedOrder order,
        CancellationToken cancellation
    )
    {
        if (order.Order is not { } received)
        {
            return Refused(order.Number, "order-too-long", StreamTexts.OrderTooLong(Limits.OrderBytes));
        }

        try
        {
            Outcome<QuoteAnswer> outcome = await orders.HandleAsync(
                caller,
                received with
                {
                    Language = language,
                },
                Purposes.Quote,
                cancellation,
                inTurn: true
            );
            return new NumberedQuote(order.Number, outcome) { Fields = order.Fields };
        }
        // One order's fault must not cost the answers to those after it.
        catch (Exception exception) when (!cancellation.IsCancellationRequested)
        {
            log.OrderFailed(exception, order.Number, traceId);
            return Refused(order.Number, "internal", StreamTexts.Failed);
        }
    }

    private static NumberedQuote Refused(long number, string code, Message detail) =>
        new(number, new Refusal([new Violation("", code, detail)]));
}
