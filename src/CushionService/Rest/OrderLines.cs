using System.Buffers;
using System.IO.Pipelines;
using System.Runtime.CompilerServices;
using CushionService.Contract;
using CushionService.Json;
using CushionService.Streaming;

namespace CushionService.Rest;

/// <summary>Reads the lines of a body, one order on each, no further ahead than it is asked. Blank lines count but have
/// no order; a line longer than <see cref="Limits.OrderBytes"/> is skipped without being kept in memory.</summary>
internal static class OrderLines
{
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
        while (true)
        {
            ReadResult result = await body.ReadAsync(cancellation);
            ReadOnlySequence<byte> buffer = result.Buffer;
            while (buffer.PositionOf((byte)'\n') is { } end)
            {
                if (Order(buffer.Slice(0, end), number++, skipping) is { } order)
                {
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
                (skipping, buffer) = (true, buffer.Slice(buffer.End));
            }

            body.AdvanceTo(buffer.Start, buffer.End);
        }
    }

    // Null for a blank line.
    private static NumberedOrder? Order(ReadOnlySequence<byte> line, long number, bool skipping) =>
        skipping || line.Length > Limits.OrderBytes ? new NumberedOrder(number, null)
        : IsBlank(line) ? null
        : new NumberedOrder(number, OrderText.Parse(line.IsSingleSegment ? line.First : line.ToArray()));

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
