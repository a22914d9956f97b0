using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Materials;

/// <summary>The stocks that an order's materials are laid out on: sheets of foam, rolls of batting and of anti-slip material.</summary>
internal static class LaidStocks
{
    /// <summary>How many there are; a stock that no cushion uses costs no search.</summary>
    /// <param name="order">The order.</param>
    /// <returns>Stocks without a width are not among them: what they sell is not laid out.</returns>
    public static int Count(OrderSpecification order)
    {
        var shop = new Shop(order);
        HashSet<StockSpecification?> used = [];
        foreach (CushionSpecification cushion in order.Cushions)
        {
            if (cushion.Fill?.Kind == FillKind.Foam)
            {
                used.UnionWith(FoamBuildUp.Layers(cushion).Select(layer => shop.Named(layer.Fill!.Item, MaterialKind.Foam)));
            }

            used.UnionWith(BattingNeeds.ItemsOf(cushion, shop).Select(item => shop.Named(item, MaterialKind.Batting)));
            if (cushion.Trim.Base == BaseKind.AntiSlip)
            {
                used.Add(AntiSlipBase.Roll(shop));
            }
        }

        return used.Count(stock => stock?.Width is not null);
    }
}
