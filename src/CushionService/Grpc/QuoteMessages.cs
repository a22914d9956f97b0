using System.Runtime.CompilerServices;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Messages;
using CushionService.Grpc.Mapping;
using CushionService.Grpc.V1;
using CushionService.Streaming;
using CushionService.Wording;
using Grpc.Core;
using Refusal = CushionService.Contract.Refusal;

namespace CushionService.Grpc;

/// <summary>Reads and writes the messages of a stream of orders and their quotes. They are numbered from 1, in the
/// order in which the caller sends them.</summary>
internal static class QuoteMessages
{
    // The message may wait for the next one before it is sent.
    private static readonly WriteOptions HeldBack = new(WriteFlags.BufferHint);

    /// <summary>Reads the orders of a stream, one message at a time, no further ahead than it is asked.</summary>
    /// <param name="requests">The messages.</param>
    /// <param name="cancellation">Ends the reading.</param>
    public static async IAsyncEnumerable<NumberedOrder> ReadAsync(
        IAsyncStreamReader<QuoteManyRequest> requests,
        [EnumeratorCancellation] CancellationToken cancellation = default
    )
    {
        for (long number = 1; await requests.MoveNext(cancellation); number++)
        {
            QuoteManyRequest request = requests.Current;
            (FieldTree? fields, IReadOnlyList<Engine.Specifications.Violation> unknown) = AnswerMask.Read(
                request.Fields,
                QuoteResponse.Descriptor
            );
            yield return new NumberedOrder(number, unknown.Count == 0 ? OrderMessage.Read(request.Order) : new ReceivedOrder(null, unknown))
            {
                Fields = fields,
            };
        }
    }

    /// <summary>Writes the answer to one order: its quote, or why there is none.</summary>
    /// <param name="responses">Where to.</param>
    /// <param name="language">The language of who reads it.</param>
    /// <param name="quote">The answer, with the number of its order.</param>
    /// <param name="more">Whether the next answer is ready too, so that this one need not be sent by itself.</param>
    public static ValueTask WriteAsync(IServerStreamWriter<QuoteManyResponse> responses, Language language, NumberedQuote quote, bool more)
    {
        responses.WriteOptions = more ? HeldBack : WriteOptions.Default;
        QuoteManyResponse response = new() { Number = quote.Number };
        if (quote.Outcome.Answered)
        {
            response.Quote = MessageWriter<QuoteAnswer, QuoteResponse>.Write(quote.Outcome.Answer, "");
            if (quote.Fields is { } fields)
            {
                AnswerMask.Keep(response.Quote, fields);
            }
        }
        else
        {
            response.Refusal = RefusalOf(quote.Outcome.Refusal, language);
        }

        return new ValueTask(responses.WriteAsync(response));
    }

    // The same code and title as a problem of REST, and the number of a status of gRPC.
    private static V1.Refusal RefusalOf(Refusal refusal, Language language)
    {
        V1.Refusal message = new()
        {
            Status = (int)Statuses.Of(refusal).Grpc,
            Code = Statuses.Kind(refusal),
            Title = new MessageWriter(language, refusal.Unit).Text(Statuses.Title(refusal)),
        };
        MessageWriter<ViolationAnswer, V1.Violation>.WriteAll(ViolationWording.Of(refusal, language), message.Violations, "");
        return message;
    }
}
