using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Materials;

/// <summary>The anti-slip material under cushions: by its area, or off a roll where one is stocked.</summary>
internal static class AntiSlipBase
{
    /// <summary>The panels that it lies under, cut like them.</summary>
    /// <param name="pattern">The pattern of the outer cover.</param>
    /// <returns>Every panel of the underside: more than one where the underside is joined or divided by a
    /// closure.</returns>
    public static IEnumerable<Panel> PanelsOf(Pattern pattern) => pattern.Panels.Where(panel => panel.Role == FabricRole.Bottom);

    /// <summary>The pieces of the material, cut as the fabric over them is, shrinkage and pleats included, so that all edges meet in the
    /// seam.</summary>
    /// <param name="order">The order, for its fabrics' shrinkage and its cutting step.</param>
    /// <param name="cushion">A cushion with a base.</param>
    /// <param name="pattern">The pattern of its outer cover.</param>
    public static IEnumerable<CutPiece> PiecesOf(OrderSpecification order, CushionSpecification cushion, Pattern pattern) =>
        PanelsOf(pattern).Select(panel => CutPiece.Of(panel, cushion, order.Fabric(cushion.Fabrics.Bottom), order.Workroom.CuttingStep));

    /// <summary>The material as it is sold.</summary>
    /// <remarks>The first stock of the kind that has a width is taken for a roll; a stock without one, or none, is sold
    /// by area.</remarks>
    public static Goods Goods(Shop shop) =>
        Roll(shop) is { } roll
            ? shop.ByLength(TrimmingNeeds.AntiSlip, MaterialKind.AntiSlip, roll)
            : shop.ByArea(TrimmingNeeds.AntiSlip, MaterialKind.AntiSlip, shop.Stocked(MaterialKind.AntiSlip));

    /// <summary>Lays every base on the roll, where there is one.</summary>
    /// <param name="basket">Where the length off the roll goes: it replaces the sum of the areas.</param>
    /// <param name="order">The order, for its fabrics' shrinkage and its cutting step.</param>
    /// <param name="patterns">The pattern of each cushion, in the order's order.</param>
    /// <param name="shop">What is stocked; without a roll nothing is laid.</param>
    /// <param name="search">How hard the layout is searched.</param>
    public static void Lay(Basket basket, OrderSpecification order, IReadOnlyList<Pattern> patterns, Shop shop, SideSearch search)
    {
        (Length Width, Length Length, int Count)[] pieces =
        [
            .. order
                .Cushions.Zip(patterns)
                .Where(one => one.First.Trim.Base == BaseKind.AntiSlip)
                .SelectMany(one => PiecesOf(order, one.First, one.Second))
                .Select(cut => (cut.Width, cut.Length, cut.Quantity)),
        ];
        if (pieces.Length > 0 && Roll(shop) is { } roll)
        {
            RollNesting.Lay(basket, Goods(shop), roll, pieces, search);
        }
    }

    /// <summary>The stock that comes off a roll; null where there is none.</summary>
    public static StockSpecification? Roll(Shop shop) => shop.Stocked(MaterialKind.AntiSlip, stock => stock.Width is not null);
}
