using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>The foam of an order's cushions, and the adhesive that joins it.</summary>
/// <param name="order">The order, for its saw kerf and its effort.</param>
/// <param name="shop">How foam and adhesive are sold.</param>
/// <param name="search">How hard each layout is searched.</param>
internal sealed class FoamNeeds(OrderSpecification order, Shop shop, SideSearch search)
{
    /// <summary>The item that adhesive is priced as where no stock is known.</summary>
    public const string Adhesive = "adhesive";

    /// <summary>What one cushion line takes.</summary>
    /// <param name="cushion">A cushion line that is filled with foam; amounts are for all its copies.</param>
    /// <returns>Foam first, layer by layer, then the adhesive of each layer, and that of the build-up last.</returns>
    public IEnumerable<Need> Of(CushionSpecification cushion) =>
        [.. FoamBuildUp.Layers(cushion).SelectMany(layer => (Need[])[.. Foam(layer), .. Glue(layer)]), .. Joints(cushion)];

    /// <summary>Lays what comes in sheets.</summary>
    /// <param name="basket">Where the sheets go: they replace the sum of the areas.</param>
    /// <param name="foams">Cushions filled with foam; those of other stock are passed over.</param>
    public void Lay(Basket basket, IEnumerable<CushionSpecification> foams)
    {
        foreach (
            IGrouping<StockSpecification, CushionSpecification> stocked in foams
                .SelectMany(cushion => FoamBuildUp.Layers(cushion))
                .Where(InSheets)
                .GroupBy(layer => StockOf(layer)!)
        )
        {
            StockSpecification stock = stocked.Key;
            var sheets = FoamSheets.Of(
                stock,
                [.. stocked.SelectMany(cushion => FoamBlock.Of(cushion, paired: true, stock.Thickness))],
                order.Workroom.Kerf,
                search
            );
            basket.Lay(
                shop.Each(stock.Id, MaterialKind.Foam, stock),
                sheets.Count,
                FoamTexts.Sheets(stock.Width!.Value, stock.Length!.Value, order.Workroom.Kerf, sheets.Count, sheets.Least == sheets.Count)
            );
        }
    }

    // By weight where the density is known and foam is sold so, by area from a stock of known thickness, by the sheet, or else as a block
    // made to size.
    private IEnumerable<Need> Foam(CushionSpecification cushion)
    {
        (FillSpecification fill, StockSpecification? stock) = (cushion.Fill!, StockOf(cushion));
        Mass? weight = fill.Density is { } density ? FoamBlock.Weight(cushion, density) : null;
        // A stock with a width is a sheet, whatever it is priced by: its number comes from a layout.
        bool sheets = InSheets(cushion),
            byMass = !sheets && weight is not null && shop.IsSoldBy(fill.Item, stock, SaleUnit.Lb, SaleUnit.Kg),
            byArea = !sheets && stock?.Thickness is not null && shop.IsSoldBy(fill.Item, stock, SaleUnit.SqYd, SaleUnit.SqM);
        foreach (FoamBlock block in FoamBlock.Of(cushion, sheets, stock?.Thickness))
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
                // For sheets the area only allots the cost; how many are bought is laid out.
                : byArea || sheets ? cut.Quantity * cut.Area
                : cut.Quantity;
            yield return new Need(cushion, goods, amount, FoamTexts.Need(Facts(block, stock, fill, weighs)))
            {
                Cuts = [cut],
                Weight = weighs,
            };
        }
    }

    // What is sawn, how it is put together, and what it weighs.
    private IEnumerable<Message> Facts(FoamBlock block, StockSpecification? stock, FillSpecification fill, Mass? weighs)
    {
        foreach (Message fact in block.Facts())
        {
            yield return fact;
        }

        if (stock?.Thickness is { } thickness)
        {
            yield return block.LayersText(thickness);
        }

        if (block.PartsOn(stock, order.Workroom.Kerf) is { Count: > 1 } parts)
        {
            yield return parts.Facts();
        }

        if (weighs is { } mass)
        {
            Force? firmness = stock?.Firmness,
                support = firmness is { } known && stock!.SupportFactor is { } factor ? new Force(factor * known.Newtons) : null;
            yield return FoamTexts.Weight(decimal.Round(fill.Density!.Value, 3), firmness, support, mass);
        }
    }

    // Adhesive goes on both faces of a joint, hence twice its area; layers and parts both have joints.
    private IEnumerable<Need> Glue(CushionSpecification cushion)
    {
        StockSpecification? stock = StockOf(cushion);
        foreach (FoamBlock block in stock is null ? [] : FoamBlock.Of(cushion, InSheets(cushion), stock.Thickness))
        {
            int joints = stock!.Thickness is { } layer ? block.Layers(layer) - 1 : 0;
            if (joints > 0)
            {
                decimal area = block.Glued(stock.Thickness!.Value);
                yield return Glued(
                    cushion,
                    area,
                    FoamTexts.GluedLayers(block.Count * joints, block.Width, block.Depth, Area.FromSquareMillimetres(area))
                );
            }

            if (block.PartsOn(stock, order.Workroom.Kerf) is { Count: > 1 } parts)
            {
                decimal area = 2 * block.Count * Square(parts.JointLength, block.Height);
                yield return Glued(
                    cushion,
                    area,
                    FoamTexts.GluedParts(block.Count, parts.JointLength, block.Height, Area.FromSquareMillimetres(area))
                );
            }
        }
    }

    // Layers are glued over their whole base, a crown over its own.
    private IEnumerable<Need> Joints(CushionSpecification cushion)
    {
        if (FoamBuildUp.Joints(cushion) is not (> 0 and var joints))
        {
            yield break;
        }

        FoamBlock[] blocks = [.. FoamBuildUp.Layers(cushion).Select(layer => FoamBlock.Of(layer, paired: false).First())];
        // Each layer is glued to what lies under it, so the undermost has no joint of its own.
        decimal area = 2 * cushion.Quantity * blocks.OrderBy(block => block.Footprint).Take(joints).Sum(block => block.Footprint);
        yield return Glued(cushion, area, FoamTexts.GluedBuildUp(cushion.Quantity * joints, Area.FromSquareMillimetres(area)));
    }

    private Need Glued(CushionSpecification cushion, decimal area, Message because) =>
        new(cushion, shop.ByArea(Adhesive, MaterialKind.Adhesive, shop.Stocked(MaterialKind.Adhesive)), area, because);

    private static decimal Square(Length one, Length other) => one.In(LengthUnit.Millimetre) * other.In(LengthUnit.Millimetre);

    private StockSpecification? StockOf(CushionSpecification cushion) => shop.Named(cushion.Fill!.Item, MaterialKind.Foam);

    private bool InSheets(CushionSpecification cushion) => StockOf(cushion)?.Width is not null;
}
