using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>A stock's fields: which sizes each kind has, which of them it cannot do without, and the units in which it is sold.</summary>
/// <remarks>What is sold by length needs no length of its own; sold each, it is a roll or a spool and must say how much it holds. A sheet
/// of foam has all three sizes, foam by weight has none.</remarks>
internal static class StockFields
{
    // A kind that is not listed is no stock: fabric.
    private static readonly ImmutableDictionary<MaterialKind, ImmutableArray<string>> FieldsByKind = new Dictionary<
        MaterialKind,
        ImmutableArray<string>
    >
    {
        [MaterialKind.Foam] =
        [
            nameof(Stock.Width),
            nameof(Stock.Length),
            nameof(Stock.Thickness),
            nameof(Stock.Density),
            nameof(Stock.Firmness),
            nameof(Stock.SupportFactor),
            nameof(Stock.Oversize),
        ],
        [MaterialKind.Batting] = [nameof(Stock.Width), nameof(Stock.Length), nameof(Stock.Thickness)],
        [MaterialKind.LooseFill] = [nameof(Stock.Density), nameof(Stock.Weight)],
        [MaterialKind.Zipper] = [nameof(Stock.Length)],
        [MaterialKind.Slider] = [],
        [MaterialKind.HookAndLoopTape] = [nameof(Stock.Width), nameof(Stock.Length)],
        [MaterialKind.Thread] = [nameof(Stock.Length)],
        [MaterialKind.Cord] = [nameof(Stock.Diameter), nameof(Stock.Length)],
        [MaterialKind.Webbing] = [nameof(Stock.Width), nameof(Stock.Length)],
        [MaterialKind.Button] = [nameof(Stock.Diameter)],
        [MaterialKind.Twine] = [nameof(Stock.Length)],
        [MaterialKind.AntiSlip] = [nameof(Stock.Width), nameof(Stock.Length)],
        [MaterialKind.Eyelet] = [],
        [MaterialKind.Adhesive] = [nameof(Stock.Coverage)],
        [MaterialKind.Form] =
        [
            nameof(Stock.Width),
            nameof(Stock.Depth),
            nameof(Stock.Thickness),
            nameof(Stock.Diameter),
            nameof(Stock.Length),
        ],
        [MaterialKind.LipCord] = [nameof(Stock.Diameter), nameof(Stock.Length)],
        [MaterialKind.Fringe] = [nameof(Stock.Width), nameof(Stock.Length)],
        [MaterialKind.Gimp] = [nameof(Stock.Width), nameof(Stock.Length)],
        [MaterialKind.Binding] = [nameof(Stock.Width), nameof(Stock.Length)],
    }.ToImmutableDictionary();

    // Every size that some kind has, once.
    private static ImmutableArray<string> AllFields { get; } = [.. FieldsByKind.Values.SelectMany(fields => fields).Distinct()];

    // The sizes that a stock cannot do without, given what it has.
    private static string[] Required(Stock stock) =>
        stock.Kind switch
        {
            // A support factor is a multiple of the firmness (65 % over 25 % of indentation), and means nothing without it.
            MaterialKind.Foam when stock.SupportFactor is not null && stock.Firmness is null => [nameof(Stock.Firmness)],
            MaterialKind.Foam when stock.Width is not null || stock.Length is not null =>
            [
                nameof(Stock.Width),
                nameof(Stock.Length),
                nameof(Stock.Thickness),
            ],
            MaterialKind.Batting => [nameof(Stock.Width), .. Roll(stock)],
            // A round form has a diameter, and a length where it is a roll; another has two sides.
            MaterialKind.Form when stock.Length is not null => [nameof(Stock.Diameter)],
            MaterialKind.Form when stock.Width is not null || stock.Depth is not null => [nameof(Stock.Width), nameof(Stock.Depth)],
            // A bag of fill says how much it holds.
            MaterialKind.LooseFill when stock.Sold?.Unit == SaleUnit.Each => [nameof(Stock.Weight)],
            MaterialKind.HookAndLoopTape
            or MaterialKind.Binding
            or MaterialKind.Thread
            or MaterialKind.Cord
            or MaterialKind.LipCord
            or MaterialKind.Fringe
            or MaterialKind.Gimp
            or MaterialKind.Webbing
            or MaterialKind.Twine => Roll(stock),
            MaterialKind.AntiSlip when stock.Width is not null => Roll(stock),
            MaterialKind.Adhesive when stock.Sold?.Unit is not (null or SaleUnit.SqYd or SaleUnit.SqM) => [nameof(Stock.Coverage)],
            _ => [],
        };

    // The units in which a stock may be sold; the usual one first.
    private static ImmutableArray<SaleUnit> Units(Stock stock) =>
        stock.Kind switch
        {
            MaterialKind.Foam when stock.Width is not null => [SaleUnit.Each],
            MaterialKind.Foam when stock.Thickness is null => [SaleUnit.Each, SaleUnit.Lb, SaleUnit.Kg],
            MaterialKind.Foam => [SaleUnit.Each, SaleUnit.Lb, SaleUnit.Kg, SaleUnit.SqYd, SaleUnit.SqM],
            MaterialKind.LooseFill => [SaleUnit.Lb, SaleUnit.Kg, SaleUnit.Each],
            MaterialKind.Zipper when stock.Length is not null => [SaleUnit.Each],
            MaterialKind.Slider or MaterialKind.Button or MaterialKind.Eyelet or MaterialKind.Form => [SaleUnit.Each],
            // Without a width it is sold by area.
            MaterialKind.AntiSlip when stock.Width is null => [SaleUnit.SqYd, SaleUnit.SqM],
            // Without a coverage it is listed by the area that is glued.
            MaterialKind.Adhesive => stock.Coverage is null ? [SaleUnit.SqYd, SaleUnit.SqM] : [SaleUnit.Each, SaleUnit.Lb, SaleUnit.Kg],
            _ => [SaleUnit.Yd, SaleUnit.M, SaleUnit.Each],
        };

    /// <summary>Reports each size that the kind needs and is not there, each that means nothing to it, and a unit that it is not sold
    /// by.</summary>
    /// <returns>Whether nothing is wrong.</returns>
    /// <param name="stock">The stock as written.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="findings">Takes what is wrong with the stock.</param>
    public static bool Check(Stock stock, MaterialKind kind, Findings findings)
    {
        // Fabrics have a list of their own, with their grain and their repeat.
        if (!FieldsByKind.TryGetValue(kind, out ImmutableArray<string> fields))
        {
            findings.Refuse(nameof(stock.Kind), "not-combinable", StockTexts.FabricInStocks);
            return false;
        }

        // A form is round or has sides, not both.
        if (kind == MaterialKind.Form && stock is { Diameter: not null } and ({ Width: not null } or { Depth: not null }))
        {
            findings.Refuse(nameof(stock.Diameter), "not-combinable", StockTexts.RoundForm);
            return false;
        }

        // All is reported at once: what is too much, what is missing, and the unit of sale.
        bool sound = true;
        foreach (string field in AllFields.Where(field => !fields.Contains(field) && IsGiven(stock, field)))
        {
            findings.NotApplicable(field, FieldTexts.NotForStock(FieldNames.Words(field), kind));
            sound = false;
        }

        foreach (string field in Required(stock).Where(field => !IsGiven(stock, field)))
        {
            findings.Refuse(field, "required", FieldTexts.RequiredForStock(FieldNames.Words(field), kind));
            sound = false;
        }

        if (stock.Sold?.Unit is { } unit && Enum.IsDefined(unit) && Units(stock) is var units && !units.Contains(unit))
        {
            findings.Refuse("Sold.Unit", "not-combinable", StockTexts.SaleUnits(kind, units));
            sound = false;
        }

        return sound;
    }

    // Whether the stock has a size, by its property.
    private static bool IsGiven(Stock stock, string field) =>
        field switch
        {
            nameof(Stock.Width) => stock.Width is not null,
            nameof(Stock.Depth) => stock.Depth is not null,
            nameof(Stock.Length) => stock.Length is not null,
            nameof(Stock.Thickness) => stock.Thickness is not null,
            nameof(Stock.Diameter) => stock.Diameter is not null,
            nameof(Stock.Density) => stock.Density is not null,
            nameof(Stock.Firmness) => stock.Firmness is not null,
            nameof(Stock.SupportFactor) => stock.SupportFactor is not null,
            nameof(Stock.Oversize) => stock.Oversize is not null,
            nameof(Stock.Weight) => stock.Weight is not null,
            nameof(Stock.Coverage) => stock.Coverage is not null,
            _ => throw new ArgumentOutOfRangeException(nameof(field)),
        };

    // What is sold each by length is a spool or a roll, and holds so much.
    private static string[] Roll(Stock stock) => stock.Sold?.Unit == SaleUnit.Each ? [nameof(Stock.Length)] : [];
}
