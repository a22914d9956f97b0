using CushionService.Engine.Specifications;

namespace CushionService.Grpc.Mapping;

/// <summary>Reads an order from its message: at once when it is sound, again and in detail when it is not.</summary>
internal static class OrderMessage
{
    public static Reading Read(V1.Order? message)
    {
        if (message is null)
        {
            return new Reading(null, [new Violation("", "wrong-type", "The call has no order.")]);
        }

        Doubts doubts = new(message.Currency);
        Contract.Orders.Order order = MessageReader<V1.Order, Contract.Orders.Order>.Read(message, doubts);
        return new Reading(order, doubts.Any ? [.. MessageDiagnosis.FaultsOf(message, message.Currency)] : []);
    }
}
