using System.Globalization;
using System.IO.Compression;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Documents;
using CushionService.Engine.Specifications;
using CushionService.Rejections;
using NATS.Client.Core;
using NATS.Client.JetStream;
using NATS.Client.JetStream.Models;

namespace CushionService.Bulk;

/// <summary>Answers one order of the queue: quotes it, stores the answer, and only then acknowledges the order. A worker that dies in
/// between leaves the order to another, whose answer has the same id and is not stored again.</summary>
/// <param name="queue">Where the answer goes.</param>
/// <param name="desk">Quotes the order.</param>
/// <param name="configuration">Has the public address.</param>
internal sealed class OrderAnswering(OrderQueue queue, BulkDesk desk, IConfiguration configuration)
{
    // Of the headers, in bytes.
    private const int HeaderRoom = 4096;

    private static readonly AckOpts Confirmed = new() { DoubleAck = true };

    private readonly string _site = configuration[ProblemAddress.Setting]?.TrimEnd('/') ?? "";

    /// <summary>Answers an order.</summary>
    /// <param name="order">The order.</param>
    /// <param name="most">Times that it may be delivered.</param>
    /// <exception cref="NatsException">The server could not store the answer; the order stays in the queue.</exception>
    public async Task AnswerAsync(QueuedOrder order, int most)
    {
        if (order.Deliveries > (ulong)most)
        {
            await BuryAsync(order, "internal");
            return;
        }

        var received = order.Read();
        Outcome<QuoteAnswer> outcome = desk.Quote(received, CancellationToken.None);
        int status = outcome.Answered ? StatusCodes.Status200OK : Statuses.Of(outcome.Refusal).Http;
        // What is no order cannot be answered to: it has no reference, perhaps no language, and trying it again would
        // change nothing.
        if (status is StatusCodes.Status400BadRequest or StatusCodes.Status413PayloadTooLarge)
        {
            await BuryAsync(order, Statuses.Kind(outcome.Refusal!));
            return;
        }

        byte[] body = BulkText.Of(outcome, received?.Language ?? default, order.TraceId, null, _site);
        NatsHeaders headers = order.Headers();
        // A server takes messages up to a size, so a long quote is compressed, and one that is too long even then becomes
        // a problem.
        if (body.Length > queue.MostBytes - HeaderRoom)
        {
            headers["Content-Encoding"] = "gzip";
            body = Compressed(body);
            if (body.Length > queue.MostBytes - HeaderRoom)
            {
                headers.Remove("Content-Encoding");
                (outcome, status) = (TooLarge(body.Length, queue.MostBytes), StatusCodes.Status422UnprocessableEntity);
                body = BulkText.Of(outcome, received?.Language ?? default, order.TraceId, null, _site);
            }
        }

        headers["Content-Type"] = outcome.Answered ? BulkText.Json : Problem.MediaType;
        headers[OrderSubjects.Status] = status.ToString(CultureInfo.InvariantCulture);
        await StoreAsync(order, OrderSubjects.Answers, body, headers);
    }

    // As it was sent, so that whoever looks at the dead letters sees what the worker saw.
    private Task BuryAsync(QueuedOrder order, string code)
    {
        NatsHeaders headers = order.Headers();
        headers[OrderSubjects.Code] = code;
        return StoreAsync(order, OrderSubjects.Dead, order.Message.Data ?? [], headers);
    }

    private async Task StoreAsync(QueuedOrder order, string subject, byte[] body, NatsHeaders headers)
    {
        // A duplicate is stored already, by this worker or another: the order is answered.
        PubAckResponse stored = await queue.Stream.PublishAsync(subject, body, headers: headers);
        if (stored.Error is { } error)
        {
            throw new NatsJSApiException(error);
        }

        await order.Message.AckAsync(Confirmed);
    }

    private static Refusal TooLarge(int bytes, int most) =>
        new([new Violation("", "document-too-long", DocumentTexts.DocumentTooLong(1 + (bytes >> 20), Math.Max(1, most >> 20)))]);

    private static byte[] Compressed(byte[] body)
    {
        using MemoryStream to = new();
        using (GZipStream gzip = new(to, CompressionLevel.Fastest))
        {
            gzip.Write(body);
        }

        return to.ToArray();
    }
}
