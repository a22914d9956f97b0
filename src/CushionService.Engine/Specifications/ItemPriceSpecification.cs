using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications;

/// <summary>What one unit of an item costs.</summary>
/// <param name="Amount">Price of one unit, at least 0, without tax.</param>
/// <param name="Per">The unit; the item is sold by it.</param>
public sealed record ItemPriceSpecification(Money Amount, SaleUnit Per);
