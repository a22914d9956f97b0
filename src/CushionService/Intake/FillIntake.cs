using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>Checks what fills a cushion, and specifies it: its own figures first, then its stock's, then the trade's.</summary>
/// <remarks>Foam is cut to the finished cover, larger by the oversize, so that it fills the corners; under a wrap it is cut to the
/// cover's size. Loose fill is measured by volume, packed density and plumpness. Densities are in kg/m³.</remarks>
internal static class FillIntake
{
    private static readonly LengthField<Fill> Oversize = RecordForm<Fill>.Length(nameof(Fill.Oversize));

    /// <summary>The fill; null for none, or where it was refused.</summary>
    /// <param name="fill">The fill as written; null for none.</param>
    /// <param name="order">The order, with its stocks and its workroom's practice.</param>
    /// <param name="findings">Takes what is wrong with the fill.</param>
    public static FillSpecification? Read(Fill? fill, OrderContext order, Findings findings)
    {
        if (fill is null)
        {
            return null;
        }

        Fields<Fill> fields = RecordForm<Fill>.Read(fill, findings);
        WrapSpecification? wrap = fill.Wrap is { } wrapped ? ReadWrap(wrapped, order, findings.Within(nameof(fill.Wrap))) : null;
        if (fill.Kind is not { } kind || !Enum.IsDefined(kind))
        {
            return null;
        }

        FieldsApply(fill, kind, findings);
        // The stock may know the density that the order leaves out.
        NamedStock? stock = kind == FillKind.None ? null : FromStock(fill, kind, order, findings);
        // Foam under a wrap is cut to the cover's size: the wrap fills it out.
        if (fields.Or(Oversize, fill.Wrap is null ? order.Practice.FoamOversize : Length.Zero) is not { } oversize || !fields.IsSound)
        {
            return null;
        }

        FitsCover(fill, oversize, order.Practice.Fills, findings);
        // Loose fill is polyester fibre unless the order says otherwise (common practice, no source).
        LooseFill material = fill.Material ?? LooseFill.PolyesterFibre;
        return kind == FillKind.None
            ? null
            : new FillSpecification(
                kind,
                fill.Stock ?? (kind == FillKind.Foam ? "foam" : Words<LooseFill>.Of(material)),
                (decimal?)fill.Density ?? stock?.Density ?? (kind == FillKind.Loose ? Filling.PackedDensity(material) : null),
                oversize,
                (decimal?)fill.Plumpness ?? order.Practice.Fills.Plumpness
            )
            {
                Wrap = wrap,
            };
    }

    // The wrap: batting, three sides and one layer unless the order says otherwise (common practice, no source).
    private static WrapSpecification? ReadWrap(Wrap wrap, OrderContext order, Findings findings)
    {
        bool sound = RecordForm<Wrap>.Read(wrap, findings).IsSound;
        StockNames.Check(wrap.Stock, MaterialKind.Batting, nameof(wrap.Stock), order, findings);
        return sound ? new WrapSpecification(wrap.Stock ?? OnlyBatting(order), wrap.Sides ?? WrapSides.ThreeSides, wrap.Layers ?? 1) : null;
    }

    // Reports each field that means nothing to the kind of fill.
    private static void FieldsApply(Fill fill, FillKind kind, Findings findings)
    {
        Only(FillKind.Foam, fill.Oversize is not null, nameof(fill.Oversize));
        Only(FillKind.Foam, fill.Wrap is not null, nameof(fill.Wrap));
        Only(FillKind.Loose, fill.Material is not null, nameof(fill.Material));
        Only(FillKind.Loose, fill.Plumpness is not null, nameof(fill.Plumpness));
        if (kind == FillKind.None)
        {
            Only(FillKind.Foam, fill.Density is not null, nameof(fill.Density));
            Only(FillKind.Foam, fill.Stock is not null, nameof(fill.Stock));
        }

        void Only(FillKind taker, bool given, string field)
        {
            if (given && kind != taker)
            {
                findings.NotApplicable(field, FieldTexts.NotForFill(FieldNames.Words(field), kind));
            }
        }
    }

    // The stock that the fill names; null for none, or one that is unknown. Two densities would contradict each other.
    private static NamedStock? FromStock(Fill fill, FillKind kind, OrderContext order, Findings findings)
    {
        MaterialKind material = kind == FillKind.Foam ? MaterialKind.Foam : MaterialKind.LooseFill;
        StockNames.Check(fill.Stock, material, nameof(fill.Stock), order, findings);
        NamedStock? stock = order.Stock(fill.Stock);
        if (fill.Density is not null && stock is { HasDensity: true })
        {
            findings.Refuse(nameof(fill.Density), "not-combinable", StockTexts.OwnDensity(stock.Id!));
        }

        return stock;
    }

    // Warns of foam that is hard to put in: more than the practice's largest oversize, or larger than its cover under a wrap.
    private static void FitsCover(Fill fill, Length oversize, FillPractice practice, Findings findings)
    {
        if (fill.Oversize is null)
        {
            return;
        }

        if (oversize > practice.LargestOversize)
        {
            findings.Warn(Oversize.Name, "foam-too-large", StockTexts.FoamTooLarge(practice.LargestOversize));
        }
        else if (fill.Wrap is not null && oversize > Length.Zero)
        {
            findings.Warn(Oversize.Name, "foam-too-large", StockTexts.FoamUnderWrap);
        }
    }

    // The item that a wrap is listed as: the order's only batting, or else the word.
    private static string OnlyBatting(OrderContext order) =>
        order.Stocks.Where(stock => stock.Kind == MaterialKind.Batting).ToArray() is [{ Id: { } only }] ? only : "batting";
}
