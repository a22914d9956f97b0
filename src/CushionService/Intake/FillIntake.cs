using System.Collections.Immutable;
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
    private static readonly LengthField<Fill> Oversize = RecordForm<Fill>.Length(nameof(Fill.Oversize)),
        Width = RecordForm<Fill>.Length(nameof(Fill.Width)),
        Depth = RecordForm<Fill>.Length(nameof(Fill.Depth)),
        Thickness = RecordForm<Fill>.Length(nameof(Fill.Thickness)),
        Crown = RecordForm<Fill>.Length(nameof(Fill.Crown));

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
        SaidOnce(fill, findings);
        // Most particular first: what the order says, what its stock says, what the trade does.
        // The stock may know the density that the order leaves out.
        NamedStock? stock = kind == FillKind.None ? null : FromStock(fill, kind, order, findings);
        ImmutableArray<FoamLayerSpecification> layers = kind == FillKind.Foam ? FoamLayerIntake.Read(fill, order, findings) : [];
        // Foam under a wrap is cut to the cover's size: the wrap fills it out.
        if (
            fields.Or(Oversize, stock?.Oversize ?? (fill.Wrap is null ? order.Practice.FoamOversize : Length.Zero)) is not { } oversize
            || !fields.IsSound
            || (fill.Layers is { Count: > 0 } && kind == FillKind.Foam && layers.IsEmpty)
        )
        {
            return null;
        }

        // Where layers differ, the cushion is as large as the largest of them, and carried by the undermost.
        oversize = layers.IsEmpty ? oversize : layers.Max(layer => layer.Oversize);

        FitsCover(fill, oversize, order.Practice.Fills, findings);
        // Loose fill is polyester fibre unless the order says otherwise (common practice, no source).
        LooseFill material = fill.Material ?? LooseFill.PolyesterFibre;
        Fullness fullness = fill.Fullness ?? Fullness.Medium;
        return kind == FillKind.None
            ? null
            : new FillSpecification(
                kind,
                layers.LastOrDefault()?.Item
                    ?? fill.Stock
                    ?? (kind == FillKind.Loose ? Words<LooseFill>.Of(material) : Words<FillKind>.Of(kind)),
                (decimal?)fill.Density ?? stock?.Density ?? (kind == FillKind.Loose ? Filling.PackedDensity(material) : null),
                oversize,
                (decimal?)fill.Plumpness ?? FillPractice.Plumpness(fullness)
            )
            {
                Layers = layers,
                Crown = fields[Crown] ?? Length.Zero,
                Wrap = wrap,
                Fullness = fullness,
                Weight = fill.Weight is { } kilograms ? new Mass((decimal)kilograms * 1000) : null,
                Form = kind == FillKind.Form ? ReadForm(fill, fields) : null,
            };
    }

    // A size in one figure is a round or a square form.
    private static FormSpecification ReadForm(Fill fill, Fields<Fill> fields) =>
        new(fill.Stock, fields[Width], fields[Depth] ?? fields[Width], fields[Thickness]);

    // A number and a word for one thing would contradict each other, and so would two sizes of a form.
    private static void SaidOnce(Fill fill, Findings findings)
    {
        if (fill.Plumpness is not null && fill.Fullness is not null)
        {
            findings.Refuse(nameof(fill.Plumpness), "not-combinable", StockTexts.PlumpnessWithFullness);
        }

        if (fill.Weight is not null)
        {
            Refuse(fill.Plumpness is not null, nameof(fill.Plumpness));
            Refuse(fill.Fullness is not null, nameof(fill.Fullness));
        }

        if (fill.Depth is not null && fill.Width is null)
        {
            findings.Refuse(nameof(fill.Width), "required", StockTexts.FormWidth);
        }

        void Refuse(bool given, string field)
        {
            if (given)
            {
                findings.Refuse(field, "not-combinable", StockTexts.WeightWithFullness(FieldNames.Words(field)));
            }
        }
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
        Only(FillKind.Foam, fill.Layers is not null, nameof(fill.Layers));
        Only(FillKind.Foam, fill.Crown is not null, nameof(fill.Crown));
        Only(FillKind.Loose, fill.Material is not null, nameof(fill.Material));
        Only(FillKind.Loose, fill.Plumpness is not null, nameof(fill.Plumpness));
        Only(FillKind.Loose, fill.Weight is not null, nameof(fill.Weight));
        Only(FillKind.Form, fill.Width is not null, nameof(fill.Width));
        Only(FillKind.Form, fill.Depth is not null, nameof(fill.Depth));
        Only(FillKind.Form, fill.Thickness is not null, nameof(fill.Thickness));
        Not(kind is FillKind.Foam or FillKind.None && fill.Fullness is not null, nameof(fill.Fullness));
        Not(kind is FillKind.Form or FillKind.None && fill.Density is not null, nameof(fill.Density));
        Not(kind == FillKind.None && fill.Stock is not null, nameof(fill.Stock));

        void Only(FillKind taker, bool given, string field) => Not(given && kind != taker, field);

        void Not(bool refused, string field)
        {
            if (refused)
            {
                findings.NotApplicable(field, FieldTexts.NotForFill(FieldNames.Words(field), kind));
            }
        }
    }

    // The stock that the fill names; null for none, or one that is unknown. Two densities would contradict each other.
    private static NamedStock? FromStock(Fill fill, FillKind kind, OrderContext order, Findings findings)
    {
        MaterialKind material = kind switch
        {
            FillKind.Foam => MaterialKind.Foam,
            FillKind.Form => MaterialKind.Form,
            _ => MaterialKind.LooseFill,
        };
        StockNames.Check(fill.Stock, material, nameof(fill.Stock), order, findings);
        NamedStock? stock = order.Stock(fill.Stock);
        if (fill.Density is not null && stock is { HasDensity: true })
        {
            findings.Refuse(nameof(fill.Density), "not-combinable", StockTexts.OwnDensity(stock.Name));
        }

        if (kind == FillKind.Foam && stock?.LacksDensity(fill.Density) == true)
        {
            findings.Refuse(nameof(fill.Density), "required", StockTexts.DensityRequired(stock.Name, stock.Sold!.Value));
        }

        // A size beside a stock's own is taken where it says the same, either way round.
        if (kind == FillKind.Form && fill.Width is not null && stock is { Size: { } size } && !IsSize(fill, size, order))
        {
            findings.Refuse(nameof(fill.Width), "not-combinable", StockTexts.FormSizeOfStock(stock.Name, size.Width, size.Depth));
        }

        return stock;
    }

    // Whether the size that a fill names is the size of its stock.
    // A size that cannot be read is reported elsewhere, and is not said to differ.
    private static bool IsSize(Fill fill, (Length Width, Length Depth) size, OrderContext order) =>
        !fill.Width!.Value.TryRead(order.Unit, out Length width)
        || !(fill.Depth ?? fill.Width).Value.TryRead(order.Unit, out Length depth)
        || (width, depth) == size
        || (depth, width) == size;

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
