using CushionService.Engine.Specifications;

namespace CushionService.Contract.Orders;

/// <summary>An order as it arrived, over REST or gRPC.</summary>
/// <param name="Order">What could be read; null when the order is not of the contract's types.</param>
/// <param name="Violations">What the door itself found wrong; empty for an order that reads cleanly.</param>
internal readonly record struct ReceivedOrder(Order? Order, IReadOnlyList<Violation> Violations);
