using System.Buffers;
using System.IO.Pipelines;
using System.Runtime.CompilerServices;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Json;
using CushionService.Streaming;

namespace CushionService.Rest;

/// <summary>Reads the lines of a body, one order on each, no further ahead than it is asked. Blank lines count but have
/// no order; a line longer than <see cref="Limits.OrderBytes"/> is skipped without being kept in memory.</summary>
internal static class OrderLines
{
    // A line of this length, or as many blank ones, has no order in it.
    private const long MostIdle = 16L * Limits.OrderBytes;

    /// <summary>The orders of a body, each with the number of its line, from 1.</summary>
    /// <param name="body">The body. The last line need not end in a line feed.</param>
    /// <param name="cancellation">Ends the reading.</param>
    public static async IAsyncEnumerable<NumberedOrder> ReadAsync(
        PipeReader body,
        [EnumeratorCancellation] CancellationToken cancellation = default
    )
    {
        long number = 1;
        // Whether the beginning of the current line was too long, so that the rest of it is skipped.
        bool skipping = false;
        // Bytes since the last order: a body that only expands ends, since nobody would see it.
        long idle = 0;
        while (true)
        {
            if (await ReadOnAsync(body, cancellation) is not { } result)
            {
                // The head of the answer is sent by then, so that it is a line that says so.
                yield return new NumberedOrder(number, new ReceivedOrder(null, [new Violation("", "bad-encoding", StreamTexts.Broken)]));
                yield break;
            }

            ReadOnlySequence<byte> buffer = result.Buffer;
            while (buffer.PositionOf((byte)'\n') is { } end)
            {
                idle += buffer.Slice(0, end).Length + 1;
                if (Order(buffer.Slice(0, end), number++, skipping) is { } order)
                {
                    idle = 0;
                    yield return order;
                }

                skipping = false;
                buffer = buffer.Slice(buffer.GetPosition(1, end));
            }

            if (result.IsCompleted)
            {
                if (Order(buffer, number, skipping) is { } last)
                {
                    yield return last;
                }

                body.AdvanceTo(buffer.End);
                yield break;
            }

            // Of a line that is too long already, nothing is kept in the buffer.
            if (skipping || buffer.Length > Limits.OrderBytes)
            {
                idle += buffer.Length;
                (skipping, buffer) = (true, buffer.Slice(buffer.End));
            }

            body.AdvanceTo(buffer.Start, buffer.End);
            if (idle > MostIdle)
            {
                yield return new NumberedOrder(number, null);
                yield break;
            }
        }
    }

    // Null where the body goes no further: it does not decompress.
    private static async ValueTask<ReadResult?> ReadOnAsync(PipeReader body, CancellationToken cancellation)
    {
        try
        {
            return await OrderBody.ReadOnAsync(body, cancellation);
        }
        catch (BadHttpRequestException exception) when (exception.InnerException is not null)
        {
            return null;
        }
    }

    // Null for a blank line.
    private static NumberedOrder? Order(ReadOnlySequence<byte> line, long number, bool skipping) =>
        skipping || line.Length > Limits.OrderBytes ? new NumberedOrder(number, null)
        : IsBlank(line) ? null
        : new NumberedOrder(number, OfLine(OrderText.Parse(line.IsSingleSegment ? line.First : line.ToArray())));

    // The caller counts the lines of the stream: what it reads must not speak of a body with lines of its own.
    private static ReceivedOrder OfLine(ReceivedOrder read) =>
        read.Violations is [{ Pointer: "", Code: "not-json", Detail.Arguments: [_, var at] } malformed]
            ? read with
            {
                Violations = [malformed with { Detail = StreamTexts.NotJson((long)at.Number) }],
            }
        : read.Violations is [{ Pointer: "", Code: "bad-encoding" } encoded]
            ? read with
            {
                Violations = [encoded with { Detail = StreamTexts.NotUtf8 }],
            }
        : read;

    // Spaces, tabs and carriage returns alone.
    private static bool IsBlank(ReadOnlySequence<byte> line)
    {
        foreach (ReadOnlyMemory<byte> part in line)
        {
            if (!part.Span.Trim(" \t\r"u8).IsEmpty)
            {
                return false;
            }
        }

        return true;
    }
}
