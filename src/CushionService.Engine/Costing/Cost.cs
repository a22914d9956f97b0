using System.Collections.Immutable;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Costing;

/// <summary>What the materials of an order cost, without tax.</summary>
/// <param name="Lines">A line for each material with a price.</param>
/// <param name="Total">The sum of the lines.</param>
/// <param name="Unpriced">Items without a price, which the total leaves out.</param>
public sealed record Cost(ImmutableArray<CostLine> Lines, Money Total, ImmutableArray<string> Unpriced)
{
    /// <summary>Prices a bill of materials: each line half up to the smallest coin, then the sum (common practice, no source).</summary>
    /// <param name="order">The order, with its currency and prices.</param>
    /// <param name="materials">What is bought.</param>
    /// <param name="currency">The currency of every price.</param>
    public static Cost Of(OrderSpecification order, ImmutableArray<Material> materials, Currency currency)
    {
        var lines = ImmutableArray.CreateBuilder<CostLine>();
        var unpriced = ImmutableArray.CreateBuilder<string>();
        var total = new Money(0, currency);
        foreach (Material material in materials)
        {
            if (PriceOf(order, material) is not { } price)
            {
                if (!unpriced.Contains(material.Item))
                {
                    unpriced.Add(material.Item);
                }

                continue;
            }

            Money amount = (material.Quantity * price).RoundHalfUp();
            lines.Add(new CostLine(material, price, amount));
            total += amount;
        }

        return new Cost(lines.ToImmutable(), total, unpriced.ToImmutable());
    }

    /// <summary>The selling price at a markup on cost: cost × (1 + m) (general arithmetic).</summary>
    public static Money AtMarkup(Money cost, decimal markup) => (1 + markup) * cost;

    /// <summary>The selling price at a margin on the price: cost / (1 − g), g below 1 (general arithmetic).</summary>
    public static Money AtMargin(Money cost, decimal margin)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(margin, 1);
        return cost with { Amount = cost.Amount / (1 - margin) };
    }

    // A price in another unit than the item is sold by would be a wrong quote; the item then counts as unpriced.
    private static Money? PriceOf(OrderSpecification order, Material material)
    {
        ItemPriceSpecification? price = material.Kind == MaterialKind.Fabric
            ? order.Fabrics.First(fabric => fabric.Id == material.Item).Price
            : order.Prices.GetValueOrDefault(material.Item);
        return price is not null && price.Per == material.Unit ? price.Amount : null;
    }
}
