using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>Everything to buy for an order.</summary>
public static class BillOfMaterials
{
    /// <summary>Lists fabric, fill, closures with trimmings, and thread, in that order; what several cushions need of an item is one
    /// line.</summary>
    /// <param name="order">The order.</param>
    /// <param name="patterns">The pattern of each cushion, in the order's order.</param>
    /// <param name="yardages">How much of each fabric to buy.</param>
    /// <param name="search">How hard each stock of sheets and each roll is searched.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static ImmutableArray<Material> Of(
        OrderSpecification order,
        IReadOnlyList<Pattern> patterns,
        IReadOnlyList<Yardage> yardages,
        SideSearch search
    )
    {
        // What is laid out for the whole order replaces the sums at the end, so each of these adds its needs before it
        // lays them.
        var shop = new Shop(order);
        var basket = new Basket();
        new FillNeeds(order, shop, search).AddTo(basket);
        (var closures, var trimmings) = (new ClosureNeeds(order, shop), new TrimmingNeeds(order, shop));
        foreach ((CushionSpecification cushion, Pattern pattern) in order.Cushions.Zip(patterns))
        {
            basket.Add(closures.Of(cushion, pattern));
            basket.Add(trimmings.Of(cushion, pattern));
        }

        AntiSlipBase.Lay(basket, order, patterns, shop, search);
        new ThreadNeeds(order, shop).AddTo(basket, patterns);
        return [.. yardages.Select(yardage => Fabric(yardage)), .. basket.Lines()];
    }

    private static Material Fabric(Yardage yardage)
    {
        FabricSpecification fabric = yardage.Layout.Fabric;
        return new Material(fabric.Id, MaterialKind.Fabric, yardage.SoldAmount.Units, fabric.Sold.Unit, yardage.Because)
        {
            Label = fabric.Label,
        };
    }
}
