using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>Reads a stock: which sizes each kind has, which of them it cannot do without, and by which units it is sold.</summary>
internal static class StockReading
{
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
    }.ToImmutableDictionary();

    /// <summary>Every size that a stock may have.</summary>
    public static ImmutableArray<string> AllFields { get; } = [.. FieldsByKind.Values.SelectMany(fields => fields).Distinct()];

    /// <summary>The sizes that a kind may have; null for fabric, which is no stock.</summary>
    public static ImmutableArray<string>? Fields(MaterialKind kind) =>
        FieldsByKind.TryGetValue(kind, out ImmutableArray<string> fields) ? fields : null;

    /// <summary>The sizes that a stock cannot do without, given what it has.</summary>
    public static IEnumerable<string> Required(Stock stock) =>
        stock.Kind switch
        {
            MaterialKind.Foam when stock.SupportFactor is not null && stock.Firmness is null => [nameof(Stock.Firmness)],
            MaterialKind.Foam when stock.Width is not null || stock.Length is not null =>
            [
                nameof(Stock.Width),
                nameof(Stock.Length),
                nameof(Stock.Thickness),
            ],
            MaterialKind.Batting => [nameof(Stock.Width), .. Roll(stock)],
            MaterialKind.LooseFill when stock.Sold?.Unit == SaleUnit.Each => [nameof(Stock.Weight)],
            MaterialKind.HookAndLoopTape or MaterialKind.Thread or MaterialKind.Cord or MaterialKind.Webbing or MaterialKind.Twine => Roll(
                stock
            ),
            MaterialKind.AntiSlip when stock.Width is not null => Roll(stock),
            MaterialKind.Adhesive when stock.Sold?.Unit is not (null or SaleUnit.SqYd or SaleUnit.SqM) => [nameof(Stock.Coverage)],
            _ => [],
        };

    /// <summary>The units by which a stock may be sold; the usual one first.</summary>
    public static ImmutableArray<SaleUnit> Units(Stock stock) =>
        stock.Kind switch
        {
            MaterialKind.Foam when stock.Width is not null => [SaleUnit.Each],
            MaterialKind.Foam => [SaleUnit.Each, SaleUnit.Lb, SaleUnit.Kg],
            MaterialKind.LooseFill => [SaleUnit.Lb, SaleUnit.Kg, SaleUnit.Each],
            MaterialKind.Zipper when stock.Length is not null => [SaleUnit.Each],
            MaterialKind.Slider or MaterialKind.Button or MaterialKind.Eyelet => [SaleUnit.Each],
            MaterialKind.AntiSlip when stock.Width is null => [SaleUnit.SqYd, SaleUnit.SqM],
            MaterialKind.Adhesive => stock.Coverage is null ? [SaleUnit.SqYd, SaleUnit.SqM] : [SaleUnit.Each, SaleUnit.Lb, SaleUnit.Kg],
            _ => [SaleUnit.Yd, SaleUnit.M, SaleUnit.Each],
        };

    /// <summary>The stocks of an order that keeps every rule, and after them those of its price book that have other ids.</summary>
    public static ImmutableArray<StockSpecification> Of(IReadOnlyList<Stock> stocks, OrderReading order)
    {
        ImmutableArray<StockSpecification> own = stocks.Count == 0 ? [] : [.. stocks.Select(stock => Of(stock, order))];
        return order.Book is { } book ? [.. own, .. book.Stocks.Where(stock => !own.Any(mine => mine.Id == stock.Id))] : own;
    }

    /// <summary>The stock of an order that keeps every rule.</summary>
    public static StockSpecification Of(Stock stock, OrderReading order) =>
        new()
        {
            Id = stock.Id!,
            Kind = stock.Kind!.Value,
            Width = order.Length(stock.Width),
            Length = order.Length(stock.Length),
            Thickness = order.Length(stock.Thickness),
            Diameter = order.Length(stock.Diameter),
            Density = (decimal?)stock.Density,
            Firmness = stock.Firmness is { } newtons ? new Force((decimal)newtons) : null,
            SupportFactor = (decimal?)stock.SupportFactor,
            Weight = stock.Weight is { } kilograms ? new Mass((decimal)kilograms * 1000) : null,
            Coverage = (decimal?)stock.Coverage,
            Sold = stock.Sold is { Unit: { } unit } sold
                ? new UnitSale(unit, sold.Step is { } step ? (decimal)step : UnitSale.UsualStep(unit), (decimal)(sold.Minimum ?? 0))
                : null,
        };

    // What is sold each by length is a spool or a roll, and holds so much.
    private static string[] Roll(Stock stock) => stock.Sold?.Unit == SaleUnit.Each ? [nameof(Stock.Length)] : [];
}
