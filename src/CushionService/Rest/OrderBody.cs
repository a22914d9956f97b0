using System.Buffers;
using System.IO.Pipelines;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using System.Text.Unicode;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest;

/// <summary>Reads an order from a request's body: strictly and at once when it is sound, again and in detail when it is not.</summary>
internal static class OrderBody
{
    private static readonly JsonTypeInfo<Order> OrderType = (JsonTypeInfo<Order>)Json.Options.GetTypeInfo(typeof(Order));

    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>Whether a content type is the media type that is wanted, in UTF-8.</summary>
    public static bool IsOf(string mediaType, string? contentType) =>
        contentType == mediaType
        || (
            MediaTypeHeaderValue.TryParse(contentType, out MediaTypeHeaderValue? type)
            && type.MediaType.Equals(mediaType, StringComparison.OrdinalIgnoreCase)
            && (!type.Charset.HasValue || type.Charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase))
        );

    /// <summary>Reads the whole body.</summary>
    /// <returns>The order as read; null when the body is longer than <see cref="Limits.OrderBytes"/>.</returns>
    public static async ValueTask<Reading?> ReadAsync(HttpRequest request, CancellationToken cancellation)
    {
        if (request.ContentLength > Limits.OrderBytes)
        {
            return null;
        }

        PipeReader reader = request.BodyReader;
        while (true)
        {
            ReadResult result = await reader.ReadAsync(cancellation);
            ReadOnlySequence<byte> buffer = result.Buffer;
            if (buffer.Length > Limits.OrderBytes)
            {
                reader.AdvanceTo(buffer.End);
                return null;
            }

            if (result.IsCompleted)
            {
                try
                {
                    return Parse(buffer.IsSingleSegment ? buffer.First : buffer.ToArray());
                }
                finally
                {
                    reader.AdvanceTo(buffer.End);
                }
            }

            reader.AdvanceTo(buffer.Start, buffer.End);
        }
    }

    /// <summary>Reads an order from JSON text in UTF-8.</summary>
    public static Reading Parse(ReadOnlyMemory<byte> body)
    {
        if (body.Span.StartsWith(ByteOrderMark))
        {
            body = body[ByteOrderMark.Length..];
        }

        if (!Utf8.IsValid(body.Span) || body.Span.Contains((byte)0))
        {
            return new Reading(null, [new Violation("", "bad-encoding", "The body must be JSON text in UTF-8.")]);
        }

        try
        {
            if (JsonSerializer.Deserialize(body.Span, OrderType) is { } order)
            {
                return new Reading(order, []);
            }
        }
        catch (JsonException)
        {
            // The reader stops at the first fault, without its place: the diagnosis finds them all.
        }

        return Diagnosis.OfOrder(body, OrderType);
    }
}
