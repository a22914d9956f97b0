using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Stocks;

/// <summary>What one unit of an item costs, and how it is sold.</summary>
/// <param name="Amount">Price of one unit, at least 0, without tax.</param>
/// <param name="Per">The unit; the item is sold by it.</param>
public sealed record ItemPriceSpecification(Money Amount, SaleUnit Per)
{
    /// <summary>The step that it is sold by, in units of sale, above 0; null for the usual one.</summary>
    public decimal? Step { get; init; }

    /// <summary>The least that is sold, in units of sale; null for one step.</summary>
    public decimal? Minimum { get; init; }

    /// <summary>Prices of larger quantities, by rising quantity.</summary>
    public ImmutableArray<QuantityBreak> Breaks { get; init; } = [];

    /// <summary>What the shop charges once for cutting it; null for nothing.</summary>
    public Money? CutFee { get; init; }

    /// <summary>The price of one unit when a quantity is bought: that of the last break that the quantity reaches, for all of them (common
    /// practice, no source).</summary>
    public Money UnitPrice(decimal quantity)
    {
        Money price = Amount;
        foreach (QuantityBreak step in Breaks)
        {
            price = quantity >= step.From ? step.Amount : price;
        }

        return price;
    }

    /// <summary>The quantity that is sold when so much is needed: up to the step, and no less than the minimum.</summary>
    /// <param name="needed">In units of sale.</param>
    /// <param name="usualStep">The step of an item that names none, above 0.</param>
    public decimal Sold(decimal needed, decimal usualStep)
    {
        decimal step = Step ?? usualStep;
        return Math.Ceiling(Math.Max(needed, Minimum ?? 0) / step) * step;
    }
}
