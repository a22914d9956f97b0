using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using System.Text.Unicode;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;

namespace CushionService.Json;

/// <summary>Reads an order from JSON text: strictly, and again in detail when it is not of the contract's
/// form.</summary>
internal static class OrderText
{
    private static readonly JsonTypeInfo<Order> OrderType = (JsonTypeInfo<Order>)ContractJson.Options.GetTypeInfo(typeof(Order));

    // Some editors write it; JSON text should not have it, and a reader may pass over it (RFC 8259, section 8.1).
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>Reads an order. Whatever the bytes, the caller gets an order or violations.</summary>
    /// <param name="body">The text, in UTF-8. It is not kept.</param>
    /// <exception cref="InvalidOperationException">The serializer has refused a text in which the diagnosis finds
    /// nothing: they disagree about the contract.</exception>
    /// <returns>The order; with violations, what could be read of it, or null when nothing could.</returns>
    public static ReceivedOrder Parse(ReadOnlyMemory<byte> body)
    {
        long began = Stopwatch.GetTimestamp();
        return Read(body) with { Reading = Stopwatch.GetElapsedTime(began) };
    }

    /// <summary>The text of an order that the program carries with it.</summary>
    /// <param name="beside">A type of the same folder.</param>
    /// <param name="file">The file's name.</param>
    public static byte[] Carried(Type beside, string file)
    {
        using Stream stream = beside.Assembly.GetManifestResourceStream(beside, file)!;
        byte[] text = new byte[stream.Length];
        stream.ReadExactly(text);
        return text;
    }

    private static ReceivedOrder Read(ReadOnlyMemory<byte> body)
    {
        if (body.Span.StartsWith(ByteOrderMark))
        {
            body = body[ByteOrderMark.Length..];
        }

        // A zero byte is a sign of UTF-16 or of a binary body, and no part of JSON.
        if (!Utf8.IsValid(body.Span) || body.Span.Contains((byte)0))
        {
            return new ReceivedOrder(null, [new Violation("", "bad-encoding", JsonTexts.NotUtf8)]);
        }

        bool isLong = LongLists.AreIn(body.Span);
        try
        {
            if (!isLong && JsonSerializer.Deserialize(body.Span, OrderType) is { } order)
            {
                return new ReceivedOrder(order, []);
            }
        }
        catch (JsonException)
        {
            // The serializer stops at the first error, without its place: the diagnosis finds them all.
        }

        (Order? read, IReadOnlyList<Violation> violations) = FormDiagnosis.Of(body, OrderType);
        // What is left of a list that is too long is enough for the rules to say so.
        return violations.Count > 0 || isLong
            ? new ReceivedOrder(read, violations)
            : throw new InvalidOperationException("The strict reader refused an order in which the diagnosis finds no fault.");
    }
}
