using System.Buffers;
using System.IO.Pipelines;
using System.Runtime.CompilerServices;
using CushionService.Contract;
using CushionService.Json;
using CushionService.Streaming;

namespace CushionService.Rest;

/// <summary>Reads the lines of a body, one order on each, no further ahead than it is asked. Blank lines count but hold no order; a line longer
/// than <see cref="Limits.OrderBytes"/> is passed over without being kept.</summary>
internal static class OrderLines
{
    public static async IAsyncEnumerable<NumberedOrder> ReadAsync(
        PipeReader body,
        [EnumeratorCancellation] CancellationToken cancellation = default
    )
    {
        long number = 1;
        bool passing = false;
        while (true)
        {
            ReadResult result = await body.ReadAsync(cancellation);
            ReadOnlySequence<byte> buffer = result.Buffer;
            while (buffer.PositionOf((byte)'\n') is { } end)
            {
                if (Order(buffer.Slice(0, end), number++, passing) is { } order)
                {
                    yield return order;
                }

                passing = false;
                buffer = buffer.Slice(buffer.GetPosition(1, end));
            }

            if (result.IsCompleted)
            {
                if (Order(buffer, number, passing) is { } last)
                {
                    yield return last;
                }

                body.AdvanceTo(buffer.End);
                yield break;
            }

            if (passing || buffer.Length > Limits.OrderBytes)
            {
                (passing, buffer) = (true, buffer.Slice(buffer.End));
            }

            body.AdvanceTo(buffer.Start, buffer.End);
        }
    }

    private static NumberedOrder? Order(ReadOnlySequence<byte> line, long number, bool passing) =>
        passing || line.Length > Limits.OrderBytes ? new NumberedOrder(number, null)
        : IsBlank(line) ? null
        : new NumberedOrder(number, OrderText.Parse(line.IsSingleSegment ? line.First : line.ToArray()));

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
