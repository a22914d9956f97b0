using System.Diagnostics;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;

namespace CushionService.Grpc.Mapping;

/// <summary>Reads an order from its message: by the compiled mapping, and again in detail when that has found an
/// error.</summary>
internal static class OrderMessage
{
    /// <summary>Reads an order. Whatever the message, nothing is thrown.</summary>
    /// <param name="message">The message; null when the call has none.</param>
    /// <returns>The order without the values that could not be mapped, and a violation for each of those.</returns>
    public static ReceivedOrder Read(V1.Order? message)
    {
        if (message is null)
        {
            return new ReceivedOrder(null, [new Violation("", "required", MappingTexts.NoOrder)]);
        }

        long began = Stopwatch.GetTimestamp();
        MappingErrors errors = new(message.Currency);
        Contract.Orders.Order order = MessageReader<V1.Order, Contract.Orders.Order>.Read(message, errors);
        Violation[] violations = errors.Any ? [.. MessageDiagnosis.ErrorsOf(message, message.Currency).Take(Limits.Violations)] : [];
        return new ReceivedOrder(order, violations) { Reading = Stopwatch.GetElapsedTime(began) };
    }
}
