using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using System.Text.Unicode;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;

namespace CushionService.Json;

/// <summary>Reads an order from JSON text: strictly and at once when it is sound, again and in detail when it is not.</summary>
internal static class OrderText
{
    private static readonly JsonTypeInfo<Order> OrderType = (JsonTypeInfo<Order>)ContractJson.Options.GetTypeInfo(typeof(Order));

    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>Reads an order from JSON text in UTF-8.</summary>
    public static ReceivedOrder Parse(ReadOnlyMemory<byte> body)
    {
        if (body.Span.StartsWith(ByteOrderMark))
        {
            body = body[ByteOrderMark.Length..];
        }

        if (!Utf8.IsValid(body.Span) || body.Span.Contains((byte)0))
        {
            return new ReceivedOrder(null, [new Violation("", "bad-encoding", "The body must be JSON text in UTF-8.")]);
        }

        try
        {
            if (JsonSerializer.Deserialize(body.Span, OrderType) is { } order)
            {
                return new ReceivedOrder(order, []);
            }
        }
        catch (JsonException)
        {
            // The reader stops at the first fault, without its place: the diagnosis finds them all.
        }

        return Diagnosis.OfOrder(body, OrderType);
    }
}
