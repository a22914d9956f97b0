using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>The foam of an order's cushions, and the adhesive that joins it.</summary>
internal sealed class FoamNeeds(OrderSpecification order, Shop shop, CancellationToken cancellation)
{
    /// <summary>The item that adhesive is priced as where no stock is known.</summary>
    public const string Adhesive = "adhesive";

    /// <summary>What one cushion line takes.</summary>
    public IEnumerable<Need> Of(CushionSpecification cushion) => [.. Foam(cushion), .. Glue(cushion)];

    /// <summary>Lays what comes in sheets.</summary>
    /// <param name="basket">Where the sheets go: they replace the sum of the areas.</param>
    /// <param name="foams">Cushions filled with foam; those of other stock are passed over.</param>
    public void Lay(Basket basket, IEnumerable<CushionSpecification> foams)
    {
        foreach (IGrouping<StockSpecification, CushionSpecification> stocked in foams.Where(InSheets).GroupBy(cushion => StockOf(cushion)!))
        {
            StockSpecification stock = stocked.Key;
            var sheets = FoamSheets.Of(
                stock,
                [.. stocked.SelectMany(cushion => FoamBlock.Of(cushion, paired: true))],
                order.Workroom.Kerf,
                order.Effort,
                cancellation
            );
            string fewer = sheets.Least == sheets.Count ? ", and fewer cannot hold them" : "",
                size = $"{Text(stock.Width!.Value)} × {Text(stock.Length!.Value)} with {Text(order.Workroom.Kerf)} of kerf";
            basket.Lay(
                shop.Each(stock.Id, MaterialKind.Foam, stock),
                sheets.Count,
                $"laid on sheets of {size}: {sheets.Count} {(sheets.Count == 1 ? "sheet" : "sheets")}{fewer}"
            );
        }
    }

    // By weight where the density is known and foam is sold so, by area from a stock of known thickness, by the sheet, or else as a block
    // made to size.
    private IEnumerable<Need> Foam(CushionSpecification cushion)
    {
        (FillSpecification fill, StockSpecification? stock) = (cushion.Fill!, StockOf(cushion));
        Mass? weight = fill.Density is { } density ? FoamBlock.Weight(cushion, density) : null;
        bool sheets = InSheets(cushion),
            byMass = !sheets && weight is not null && shop.IsSoldBy(fill.Item, stock, SaleUnit.Lb, SaleUnit.Kg),
            byArea = !sheets && stock?.Thickness is not null && shop.IsSoldBy(fill.Item, stock, SaleUnit.SqYd, SaleUnit.SqM);
        foreach (FoamBlock block in FoamBlock.Of(cushion, sheets))
        {
            int layers = stock?.Thickness is { } layer ? block.Layers(layer) : 1;
            FoamCut cut = block.Cut(layers, stock?.Thickness);
            Mass? weighs = weight is { } one ? block.Count * block.Makes * one : null;
            Goods goods =
                byMass ? shop.ByMass(fill.Item, MaterialKind.Foam, stock)
                : byArea ? shop.ByArea(fill.Item, MaterialKind.Foam, stock)
                : sheets ? shop.Each(fill.Item, MaterialKind.Foam, stock)
                : shop.Each(fill.Item, MaterialKind.Foam, stock) with { Apart = cushion.Id, Size = cut.Size, IsMadeToSize = true };
            decimal amount =
                byMass ? weighs!.Value.Grams
                : byArea || sheets ? cut.Quantity * cut.Area
                : cut.Quantity;
            yield return new Need(
                cushion,
                goods,
                amount,
                $"{block.Text(order.Unit)}{Made(block, stock)}{Joined(block, stock)}{Heavy(weighs, fill, stock)}"
            )
            {
                Cuts = [cut],
                Weight = weighs,
            };
        }
    }

    private string Made(FoamBlock block, StockSpecification? stock) =>
        stock?.Thickness is { } thickness ? $", {block.LayersText(thickness, order.Unit)}" : "";

    private string Joined(FoamBlock block, StockSpecification? stock) =>
        PartsOf(block, stock) is { Count: > 1 } parts
            ? $", glued from {parts.Count} parts of {Text(parts.Width)} × {Text(parts.Depth)}"
            : "";

    private string Heavy(Mass? weighs, FillSpecification fill, StockSpecification? stock) =>
        weighs is { } mass
            ? $", {AmountText.Number(decimal.Round(fill.Density!.Value, 3))} kg/m³{Firmness(stock)}: {AmountText.Weight(mass, order.Unit)}"
            : "";

    // Adhesive goes on both faces of a joint, hence twice its area; layers and parts both have joints.
    private IEnumerable<Need> Glue(CushionSpecification cushion)
    {
        StockSpecification? stock = StockOf(cushion);
        foreach (FoamBlock block in stock is null ? [] : FoamBlock.Of(cushion, InSheets(cushion)))
        {
            int joints = stock!.Thickness is { } layer ? block.Layers(layer) - 1 : 0;
            if (joints > 0)
            {
                decimal area = block.Glued(stock.Thickness!.Value);
                yield return Glued(
                    cushion,
                    area,
                    $"both faces of {block.Count * joints} × joint of {Text(block.Width)} × {Text(block.Depth)}"
                );
            }

            if (PartsOf(block, stock) is { Count: > 1 } parts)
            {
                decimal area = 2 * block.Count * Square(parts.JointLength, block.Height);
                yield return Glued(
                    cushion,
                    area,
                    $"both faces of {block.Count} × {Text(parts.JointLength)} of joint, {Text(block.Height)} high"
                );
            }
        }
    }

    private Need Glued(CushionSpecification cushion, decimal area, string joints) =>
        new(
            cushion,
            shop.ByArea(Adhesive, MaterialKind.Adhesive, shop.Stocked(MaterialKind.Adhesive)),
            area,
            $"{joints}, {AmountText.Area(area, order.Unit)}"
        );

    private static decimal Square(Length one, Length other) => one.In(LengthUnit.Millimetre) * other.In(LengthUnit.Millimetre);

    private static FoamParts? PartsOf(FoamBlock block, StockSpecification? stock) =>
        stock is { Width: { } width, Length: { } length } ? block.PartsOn(width, length) : null;

    private StockSpecification? StockOf(CushionSpecification cushion) => shop.Named(cushion.Fill!.Item, MaterialKind.Foam);

    private bool InSheets(CushionSpecification cushion) => StockOf(cushion)?.Width is not null;

    private string Firmness(StockSpecification? stock) =>
        stock?.Firmness is not { } firmness
            ? ""
            : $", firmness {AmountText.Firmness(firmness, order.Unit)} at 25 %"
                + (
                    stock.SupportFactor is { } support
                        ? $" and {AmountText.Firmness(new Force(support * firmness.Newtons), order.Unit)} at 65 %"
                        : ""
                );

    private string Text(Length length) => LengthText.Format(length, order.Unit);
}
