using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>Checks the layers of a build-up of foam, and specifies them.</summary>
/// <remarks>Layers are given from top to bottom, firm below and soft above (common practice, no source).</remarks>
internal static class FoamLayerIntake
{
    private static readonly LengthField<FoamLayer> Thickness = RecordForm<FoamLayer>.Length(nameof(FoamLayer.Thickness)),
        Oversize = RecordForm<FoamLayer>.Length(nameof(FoamLayer.Oversize));

    /// <summary>The layers; empty where there are none, or one was refused.</summary>
    /// <param name="fill">The fill as written.</param>
    /// <param name="order">The order, with its stocks and its workroom's practice.</param>
    /// <param name="findings">Takes what is wrong with the fill.</param>
    public static ImmutableArray<FoamLayerSpecification> Read(Fill fill, OrderContext order, Findings findings)
    {
        if (fill.Layers is not { Count: > 0 } layers)
        {
            return [];
        }

        Alone(fill.Stock is not null, nameof(fill.Stock));
        Alone(fill.Density is not null, nameof(fill.Density));
        Alone(fill.Oversize is not null, nameof(fill.Oversize));
        FoamLayerSpecification?[] read =
        [
            .. layers.Select((layer, i) => layer is null ? null : One(layer, fill, order, findings.Within(nameof(fill.Layers), i))),
        ];
        FirmBelow(layers, order, findings);
        return read.All(layer => layer is not null) ? [.. read.OfType<FoamLayerSpecification>()] : [];

        void Alone(bool given, string field)
        {
            if (given)
            {
                findings.Refuse(field, "not-combinable", StockTexts.LayersSay(FieldNames.Words(field)));
            }
        }
    }

    /// <summary>Whether the layers and the crown go with the cushion.</summary>
    /// <param name="cushion">The cushion, specified.</param>
    /// <param name="findings">Takes what is wrong with the cushion.</param>
    public static void FitsCushion(CushionSpecification cushion, Findings findings)
    {
        if (cushion.Fill is not { Kind: FillKind.Foam } fill || (fill.Layers.IsEmpty && fill.Crown == Length.Zero))
        {
            return;
        }

        string field = fill.Layers.IsEmpty ? "Fill.Crown" : "Fill.Layers";
        if (!ConstructionRegistry.Of(cushion.Construction).Offer.HasBlock)
        {
            // It takes no foam at all, which is said already.
            return;
        }

        if (cushion.Construction is Construction.Wedge or Construction.Bolster)
        {
            findings.Refuse(field, "not-combinable", StockTexts.LayersNotOffered(cushion.Construction));
            return;
        }

        Length sum = fill.Layers.Aggregate(Length.Zero, (total, layer) => total + layer.Thickness);
        // A thickness that is left out or refused is reported already.
        if (!fill.Layers.IsEmpty && cushion.Thickness > Length.Zero && sum != cushion.Thickness)
        {
            findings.RefuseRange(
                field,
                "out-of-range",
                StockTexts.LayersNotThickness(sum, cushion.Thickness),
                cushion.Thickness,
                cushion.Thickness
            );
        }

        if (fill.Crown > Length.Zero && FoamBuildUp.CrownOutline(cushion) is null)
        {
            findings.Refuse(
                "Fill.Crown",
                "not-combinable",
                StockTexts.NoCrown(cushion.Outline.Kind, 4 * cushion.Practice.Fills.CrownInset)
            );
        }
    }

    // Fills in what a layer leaves out as a fill of one block does.
    private static FoamLayerSpecification? One(FoamLayer layer, Fill fill, OrderContext order, Findings findings)
    {
        Fields<FoamLayer> fields = RecordForm<FoamLayer>.Read(layer, findings);
        StockNames.Check(layer.Stock, MaterialKind.Foam, nameof(layer.Stock), order, findings);
        NamedStock? stock = order.Stock(layer.Stock);
        if (layer.Density is not null && stock is { HasDensity: true })
        {
            findings.Refuse(nameof(layer.Density), "not-combinable", StockTexts.OwnDensity(stock.Name));
        }

        if (stock?.LacksDensity(layer.Density) == true)
        {
            findings.Refuse(nameof(layer.Density), "required", StockTexts.DensityRequired(stock.Name, stock.Sold!.Value));
        }

        Length usual = stock?.Oversize ?? (fill.Wrap is null ? order.Practice.FoamOversize : Length.Zero);
        return fields.IsSound && fields[Thickness] is { } thickness && fields.Or(Oversize, usual) is { } oversize
            ? new FoamLayerSpecification(layer.Stock ?? "foam", thickness, (decimal?)layer.Density ?? stock?.Density, oversize)
            : null;
    }

    // Only firmness that is known is compared, and one warning is enough.
    private static void FirmBelow(IReadOnlyList<FoamLayer?> layers, OrderContext order, Findings findings)
    {
        decimal?[] firmness = [.. layers.Select(layer => order.Stock(layer?.Stock)?.Firmness)];
        for (int i = 1; i < firmness.Length; i++)
        {
            // A core between softer layers is made to be turned over: what is sat on gives way on either side.
            if (firmness[i - 1] > firmness[i] && !firmness[..(i - 1)].Any(above => above <= firmness[i]))
            {
                findings.Warn($"{nameof(Fill.Layers)}[{i}]", "firm-above-soft", StockTexts.FirmAboveSoft);
                return;
            }
        }
    }
}
