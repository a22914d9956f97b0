using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;

namespace CushionService.Grpc.Mapping;

/// <summary>Reads an order from its message: at once when it is sound, again and in detail when it is not.</summary>
internal static class OrderMessage
{
    public static ReceivedOrder Read(V1.Order? message)
    {
        if (message is null)
        {
            return new ReceivedOrder(null, [new Violation("", "wrong-type", "The call has no order.")]);
        }

        MappingErrors errors = new(message.Currency);
        Contract.Orders.Order order = MessageReader<V1.Order, Contract.Orders.Order>.Read(message, errors);
        return new ReceivedOrder(order, errors.Any ? [.. MessageDiagnosis.FaultsOf(message, message.Currency)] : []);
    }
}
