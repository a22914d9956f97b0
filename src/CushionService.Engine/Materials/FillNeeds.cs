using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>What fills the cushions of an order: foam with its wrap and its adhesive, or loose fill.</summary>
internal sealed class FillNeeds(OrderSpecification order, Shop shop, CancellationToken cancellation)
{
    /// <summary>The item that adhesive is priced as where no stock is known.</summary>
    public const string Adhesive = "adhesive";

    /// <summary>Puts every cushion's fill into the basket, then lays what comes in sheets and off rolls.</summary>
    public void AddTo(Basket basket)
    {
        CushionSpecification[] foams = [.. order.Cushions.Where(cushion => cushion.Fill?.Kind == FillKind.Foam)];
        foreach (CushionSpecification cushion in order.Cushions.Where(cushion => cushion.Fill is not null))
        {
            basket.Add(cushion.Fill!.Kind == FillKind.Foam ? [.. Foam(cushion), .. Glue(cushion), .. Wrap(cushion)] : [Loose(cushion)]);
        }

        foreach (IGrouping<StockSpecification, CushionSpecification> stocked in foams.Where(InSheets).GroupBy(cushion => StockOf(cushion)!))
        {
            StockSpecification stock = stocked.Key;
            FoamSheets sheets = FoamSheets.Of(
                stock,
                [.. stocked.SelectMany(cushion => FoamBlock.Of(cushion, paired: true))],
                order.Workroom.Kerf,
                order.Effort,
                cancellation
            );
            string fewer = sheets.Least == sheets.Count ? ", and fewer cannot hold them" : "";
            basket.Lay(
                shop.Each(stock.Id, MaterialKind.Foam, stock),
                sheets.Count,
                $"laid on sheets of {Text(stock.Width!.Value)} × {Text(stock.Length!.Value)} with {Text(order.Workroom.Kerf)} of kerf: {sheets.Count} {(sheets.Count == 1 ? "sheet" : "sheets")}{fewer}"
            );
        }

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

    private IEnumerable<Need> Foam(CushionSpecification cushion)
    {
        (FillSpecification fill, StockSpecification? stock) = (cushion.Fill!, StockOf(cushion));
        Mass? weight = fill.Density is { } density ? FoamBlock.Weight(cushion, density) : null;
        bool sheets = InSheets(cushion),
            byMass = !sheets && weight is not null && shop.IsSoldBy(fill.Item, stock, SaleUnit.Lb, SaleUnit.Kg);
        Goods goods = byMass
            ? shop.ByMass(fill.Item, MaterialKind.Foam, stock)
            : shop.Each(fill.Item, MaterialKind.Foam, stock) with
            {
                Apart = sheets ? "" : cushion.Id,
            };
        foreach (FoamBlock block in FoamBlock.Of(cushion, sheets))
        {
            int layers = stock?.Thickness is { } layer ? block.Layers(layer) : 1;
            Mass? weighs = weight is { } one ? block.Count * block.Makes * one : null;
            string made = stock?.Thickness is { } thickness ? $", {block.LayersText(thickness, order.Unit)}" : "";
            string heavy = weighs is { } mass
                ? $", {AmountText.Number(decimal.Round(fill.Density!.Value, 3))} kg/m³{Firmness(stock)}: {AmountText.Weight(mass, order.Unit)}"
                : "";
            decimal amount =
                byMass ? weighs!.Value.Grams
                : sheets ? block.Count * layers * block.Footprint
                : block.Count * layers;
            yield return new Need(cushion.Id, goods, amount, $"{block.Text(order.Unit)}{made}{heavy}") { Weight = weighs };
        }
    }

    private IEnumerable<Need> Glue(CushionSpecification cushion)
    {
        if (StockOf(cushion)?.Thickness is not { } layer)
        {
            yield break;
        }

        foreach (FoamBlock block in FoamBlock.Of(cushion, InSheets(cushion)).Where(block => block.Layers(layer) > 1))
        {
            yield return new Need(
                cushion.Id,
                shop.ByArea(Adhesive, MaterialKind.Adhesive, shop.Stocked(MaterialKind.Adhesive)),
                block.Glued(layer),
                $"both faces of {block.Count * (block.Layers(layer) - 1)} × joint of {Text(block.Width)} × {Text(block.Depth)}, {AmountText.Area(block.Glued(layer), order.Unit)}"
            );
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
                cushion.Id,
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
            cushion.Id,
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

    private StockSpecification? StockOf(CushionSpecification cushion) => shop.Named(cushion.Fill!.Item, MaterialKind.Foam);

    private bool InSheets(CushionSpecification cushion) => StockOf(cushion)?.Width is not null;

    private string Firmness(StockSpecification? stock) =>
        stock?.Firmness is not { } firmness ? ""
        : stock.SupportFactor is not { } support ? $", firmness {AmountText.Firmness(firmness, order.Unit)} at 25 %"
        : $", firmness {AmountText.Firmness(firmness, order.Unit)} at 25 % and {AmountText.Firmness(new Force(support * firmness.Newtons), order.Unit)} at 65 %";

    private static string Round(WrapSides sides) =>
        sides switch
        {
            WrapSides.ThreeSides => "over top, front and underside",
            WrapSides.FourSides => "over top, front, underside and back",
            _ => "over the whole skin",
        };

    private string Text(Length length) => LengthText.Format(length, order.Unit);
}
