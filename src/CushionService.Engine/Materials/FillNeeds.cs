using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>What fills the cushions of an order: foam with its wrap and its adhesive, loose fill, or forms.</summary>
/// <param name="order">The order.</param>
/// <param name="shop">How foam, batting, loose fill and forms are sold.</param>
/// <param name="search">How hard each layout is searched.</param>
internal sealed class FillNeeds(OrderSpecification order, Shop shop, SideSearch search)
{
    /// <summary>Puts every cushion's fill into the basket, then lays what comes in sheets and off rolls.</summary>
    /// <param name="basket">Where the needs go, in the order of the cushions, so that the bill's lines follow the
    /// order.</param>
    public void AddTo(Basket basket)
    {
        var foam = new FoamNeeds(order, shop, search);
        var forms = new FormNeeds(order, shop);
        var batting = new BattingNeeds(order, shop, search);
        CushionSpecification[] foams = [.. order.Cushions.Where(cushion => cushion.Fill?.Kind == FillKind.Foam)];
        foreach (CushionSpecification cushion in order.Cushions)
        {
            basket.Add(
                cushion.Fill?.Kind switch
                {
                    FillKind.Foam => foam.Of(cushion),
                    FillKind.Form => [forms.Of(cushion)],
                    null => [],
                    _ => [Loose(cushion)],
                }
            );
            basket.Add(batting.Of(cushion));
        }

        foam.Lay(basket, foams);
        batting.Lay(basket);
    }

    private Need Loose(CushionSpecification cushion)
    {
        FillSpecification fill = cushion.Fill!;
        Volume room = Filling.Room(cushion);
        // A weight that the order names goes before what its room, plumpness and density give.
        Mass mass = cushion.Quantity * (fill.Weight ?? new Volume(room.CubicMillimetres * fill.Plumpness).At(fill.Density ?? 0));
        Goods goods = shop.ByMass(fill.Item, MaterialKind.LooseFill, shop.Named(fill.Item, MaterialKind.LooseFill));
        Message because = fill.Weight is { } each
            ? MaterialTexts.LooseFillOrdered(cushion.Quantity, each, room, mass)
            : MaterialTexts.LooseFill(cushion.Quantity, room, decimal.Round(fill.Plumpness, 3), decimal.Round(fill.Density ?? 0, 3), mass);
        return new Need(cushion, goods, mass.Grams, because) { Weight = mass };
    }
}
