using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Pricing;

/// <summary>Something else that is sold with an order, such as its delivery.</summary>
/// <param name="Label">What customers read.</param>
/// <param name="Quantity">How many or how much, above 0.</param>
/// <param name="Amount">The price of one, at least 0, without tax.</param>
public sealed record FreeLineSpecification(string Label, decimal Quantity, Money Amount);
