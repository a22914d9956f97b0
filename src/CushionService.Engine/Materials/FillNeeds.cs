using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>What fills the cushions of an order: foam with its wrap and its adhesive, or loose fill.</summary>
internal sealed class FillNeeds(OrderSpecification order, Shop shop, CancellationToken cancellation)
{
    /// <summary>Puts every cushion's fill into the basket, then lays what comes in sheets and off rolls.</summary>
    public void AddTo(Basket basket)
    {
        var foam = new FoamNeeds(order, shop, cancellation);
        CushionSpecification[] foams = [.. order.Cushions.Where(cushion => cushion.Fill?.Kind == FillKind.Foam)];
        foreach (CushionSpecification cushion in order.Cushions.Where(cushion => cushion.Fill is not null))
        {
            basket.Add(cushion.Fill!.Kind == FillKind.Foam ? [.. foam.Of(cushion), .. Wrap(cushion)] : [Loose(cushion)]);
        }

        foam.Lay(basket, foams);
        foreach (
            IGrouping<string, CushionSpecification> wrapped in foams
                .Where(cushion => cushion.Fill!.Wrap is not null)
                .GroupBy(cushion => cushion.Fill!.Wrap!.Item)
        )
        {
            if (shop.Named(wrapped.Key, MaterialKind.Batting) is { } roll)
            {
                Length length = RollNesting.Lay(roll.Width!.Value, wrapped.SelectMany(AllPieces), order.Effort, cancellation);
                basket.Lay(Batting(wrapped.Key), length.Nanometres, $"{Text(length)} off a roll {Text(roll.Width.Value)} wide");
            }
        }
    }

    private IEnumerable<Need> Wrap(CushionSpecification cushion)
    {
        if (cushion.Fill!.Wrap is { } wrap)
        {
            var pieces = Wrapping.Pieces(cushion, wrap);
            string sizes = string.Join(
                " and ",
                pieces.Select(piece => $"{wrap.Layers * cushion.Quantity * piece.Count} × {Text(piece.Width)} × {Text(piece.Length)}")
            );
            yield return new Need(
                cushion,
                Batting(wrap.Item),
                wrap.Layers * cushion.Quantity * Wrapping.Area(pieces),
                $"{sizes} {Round(wrap.Sides)}"
            );
        }
    }

    private Need Loose(CushionSpecification cushion)
    {
        FillSpecification fill = cushion.Fill!;
        Volume room = Filling.Room(cushion);
        Mass mass = cushion.Quantity * new Volume(room.CubicMillimetres * fill.Plumpness).At(fill.Density ?? 0);
        string space =
            order.Unit == LengthUnit.Inch
                ? $"{AmountText.Number(room.CubicFeet)} ft³"
                : $"{AmountText.Number(room.CubicMillimetres / 1_000_000)} l";
        Goods goods = shop.ByMass(fill.Item, MaterialKind.LooseFill, shop.Named(fill.Item, MaterialKind.LooseFill));
        return new Need(
            cushion,
            goods,
            mass.Grams,
            $"{cushion.Quantity} × {space} × {AmountText.Number(fill.Plumpness)} plumpness, packed at {AmountText.Number(fill.Density ?? 0)} kg/m³: {AmountText.Weight(mass, order.Unit)}"
        )
        {
            Weight = mass,
        };
    }

    // Without a roll's width batting is bought by its area.
    private Goods Batting(string item) =>
        shop.Named(item, MaterialKind.Batting) is { } roll
            ? shop.ByLength(item, MaterialKind.Batting, roll)
            : shop.ByArea(item, MaterialKind.Batting, null);

    private static IEnumerable<(Length Width, Length Length, int Count)> AllPieces(CushionSpecification cushion) =>
        Wrapping
            .Pieces(cushion, cushion.Fill!.Wrap!)
            .Select(piece => piece with { Count = piece.Count * cushion.Quantity * cushion.Fill.Wrap!.Layers });

    private static string Round(WrapSides sides) =>
        sides switch
        {
            WrapSides.ThreeSides => "over top, front and underside",
            WrapSides.FourSides => "over top, front, underside and back",
            _ => "over the whole skin",
        };

    private string Text(Length length) => LengthText.Format(length, order.Unit);
}
