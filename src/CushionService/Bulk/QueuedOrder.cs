using System.Globalization;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Json;
using CushionService.Languages;
using Microsoft.Extensions.Primitives;
using NATS.Client.Core;
using NATS.Client.JetStream;

namespace CushionService.Bulk;

/// <summary>An order as the queue has delivered it.</summary>
/// <param name="message">The message.</param>
internal sealed class QueuedOrder(INatsJSMsg<byte[]> message)
{
    private const string Trace = "traceparent";

    /// <summary>The message.</summary>
    public INatsJSMsg<byte[]> Message { get; } = message;

    /// <summary>The number that the stream has given the order, from 1.</summary>
    public ulong Number => Message.Metadata?.Sequence.Stream ?? 0;

    /// <summary>How often the order has been delivered, this time too.</summary>
    public ulong Deliveries => Message.Metadata?.NumDelivered ?? 1;

    /// <summary>Names the order in the log: its sender's trace, else its number.</summary>
    public string TraceId => Header(Trace) ?? string.Create(CultureInfo.InvariantCulture, $"{OrderSubjects.OrderStream}-{Number}");

    /// <summary>The order; null when it is too long.</summary>
    /// <returns>With the violations found while it was read, if any, and the language that its sender asked for in the
    /// headers.</returns>
    public ReceivedOrder? Read()
    {
        byte[] body = Message.Data ?? [];
        return body.Length > Limits.OrderBytes
            ? null
            : OrderText.Parse(body) with
            {
                Language = LanguageRanges.Choose(Header("Accept-Language") is { } asked ? new StringValues(asked) : StringValues.Empty),
            };
    }

    /// <summary>The headers of what is stored for the order. The id is the same for every worker that answers it, so that the server
    /// stores one answer.</summary>
    public NatsHeaders Headers()
    {
        // With the time at which the order was stored: a stream that is made anew numbers from 1 again.
        string id = string.Create(CultureInfo.InvariantCulture, $"{Number}-{Message.Metadata?.Timestamp.UtcTicks ?? 0}");
        NatsHeaders headers = new()
        {
            [OrderSubjects.MessageId] = id,
            [OrderSubjects.Number] = Number.ToString(CultureInfo.InvariantCulture),
        };
        if (Header(OrderSubjects.MessageId) is { } own)
        {
            headers[OrderSubjects.OrderId] = own;
        }

        return headers;
    }

    private string? Header(string name) =>
        Message.Headers is { } headers && headers.TryGetValue(name, out StringValues value) ? value.ToString() : null;
}
