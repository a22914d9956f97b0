using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Specifications.Pricing;

/// <summary>A shop's prices, kept by the service; orders name it.</summary>
/// <param name="Name">What orders name it by.</param>
/// <param name="Version">The shop's own word for this version; null when there is none.</param>
/// <param name="Currency">The currency of every price in it.</param>
/// <param name="Prices">Price of each item, fabric too, by item.</param>
/// <param name="Stocks">Materials other than fabric as the shop stocks them, by distinct ids.</param>
/// <param name="Costing">What is charged beyond materials.</param>
public sealed record PriceBookSpecification(
    string Name,
    string? Version,
    Currency Currency,
    ImmutableDictionary<string, ItemPriceSpecification> Prices,
    ImmutableArray<StockSpecification> Stocks,
    CostingSpecification Costing
)
{
    /// <summary>What the shop says of items, by item; none when left out.</summary>
    public ImmutableDictionary<string, GoodSpecification> Goods { get; init; } = ImmutableDictionary<string, GoodSpecification>.Empty;
}
