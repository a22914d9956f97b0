using System.Collections.Immutable;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Costing;

/// <summary>What the materials of an order cost.</summary>
/// <param name="Lines">A line for each material with a price.</param>
/// <param name="Unpriced">Items without a price that applies.</param>
/// <param name="Unsized">Those of them that have a price for each, though each has a size of its own.</param>
internal sealed record MaterialPricing(ImmutableArray<CostLine> Lines, ImmutableArray<string> Unpriced, ImmutableArray<Material> Unsized)
{
    /// <summary>Prices a bill of materials: each line half up to the smallest coin (common practice, no source). A quantity break counts
    /// all that is bought of an item.</summary>
    /// <param name="order">The order, with its prices.</param>
    /// <param name="materials">All that is bought.</param>
    /// <returns>A cut fee is charged once a line, on top of the price, and rounded by itself.</returns>
    public static MaterialPricing Of(OrderSpecification order, ImmutableArray<Material> materials)
    {
        var lines = ImmutableArray.CreateBuilder<CostLine>();
        var unpriced = ImmutableArray.CreateBuilder<string>();
        var bought = materials
            .GroupBy(material => (material.Item, material.Unit))
            .ToDictionary(item => item.Key, item => item.Aggregate(Fraction.Of(0, 1), (sum, material) => sum + material.Quantity));
        // What the customer brings is not sold to them.
        foreach (Material material in materials.Where(material => !IsCustomers(order, material)))
        {
            if (PriceOf(order, material) is { } price)
            {
                Money unit = price.UnitPrice(bought[(material.Item, material.Unit)]);
                Money amount = (material.Quantity * unit).RoundHalfUp();
                lines.Add(new CostLine(material, unit, price.CutFee, price.CutFee is { } fee ? amount + fee.RoundHalfUp() : amount));
            }
            else if (!unpriced.Contains(material.Item))
            {
                unpriced.Add(material.Item);
            }
        }

        return new MaterialPricing(
            lines.ToImmutable(),
            unpriced.ToImmutable(),
            [.. materials.Where(material => material.IsMadeToSize && order.Prices.GetValueOrDefault(material.Item)?.Per == material.Unit)]
        );
    }

    private static bool IsCustomers(OrderSpecification order, Material material) =>
        material.Kind == MaterialKind.Fabric && order.Fabric(material.Item).CustomerOwned;

    // A price in another unit than the item is sold by, or for each where each has a size of its own, would be a wrong quote; the item then
    // counts as unpriced.
    private static ItemPriceSpecification? PriceOf(OrderSpecification order, Material material)
    {
        ItemPriceSpecification? price =
            material.Kind == MaterialKind.Fabric ? order.Fabric(material.Item).Price : order.Prices.GetValueOrDefault(material.Item);
        return price?.Per == material.Unit && !material.IsMadeToSize ? price : null;
    }
}
