using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Stocks;

/// <summary>The price of an item from a quantity upwards.</summary>
/// <param name="From">The least quantity that it holds for, in units of sale, above 0.</param>
/// <param name="Amount">Price of one unit, at least 0, without tax.</param>
public readonly record struct QuantityBreak(Fraction From, Money Amount);
