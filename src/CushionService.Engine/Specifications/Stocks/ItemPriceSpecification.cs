using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Stocks;

/// <summary>What one unit of an item costs, and how it is sold.</summary>
/// <param name="Amount">Price of one unit, at least 0, without tax.</param>
/// <param name="Per">The unit; the item is sold by it.</param>
public sealed record ItemPriceSpecification(Money Amount, SaleUnit Per)
{
    /// <summary>The step that it is sold by, in units of sale, above 0; null for the usual one.</summary>
    public Fraction? Step { get; init; }

    /// <summary>The least that is sold, in units of sale; null for one step.</summary>
    public Fraction? Minimum { get; init; }

    /// <summary>Prices of larger quantities, by rising quantity.</summary>
    public ImmutableArray<QuantityBreak> Breaks { get; init; } = [];

    /// <summary>What the shop charges once for cutting it; null for nothing.</summary>
    public Money? CutFee { get; init; }

    /// <summary>The price of one unit when a quantity is bought: that of the last break that the quantity reaches, for all of them (common
    /// practice, no source).</summary>
    public Money UnitPrice(Fraction quantity)
    {
        Money price = Amount;
        foreach (QuantityBreak step in Breaks)
        {
            price = quantity >= step.From ? step.Amount : price;
        }

        return price;
    }
}
