using CushionService.Contract;
using CushionService.Contract.Orders;

namespace CushionService.Streaming;

/// <summary>An order of a stream, and where it was in it.</summary>
/// <param name="Number">Its line, or its place among the messages, from 1.</param>
/// <param name="Order">The order as it arrived; null when it was longer than <see cref="Limits.OrderBytes"/> and so
/// left unread.</param>
internal readonly record struct NumberedOrder(long Number, ReceivedOrder? Order)
{
    /// <summary>The fields of the quote that are asked for; null for all.</summary>
    public FieldTree? Fields { get; init; }
}
