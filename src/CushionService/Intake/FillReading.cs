using CushionService.Contract.Orders;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>Reads what fills a cushion, defaults taken, those of its stock before the trade's.</summary>
internal static class FillReading
{
    private const decimal UsualPlumpness = 0.9m;

    /// <summary>The fill of an order that keeps every rule; null for none.</summary>
    public static FillSpecification? Of(Fill? fill, OrderReading order)
    {
        if (fill?.Kind is not { } kind || kind == FillKind.None)
        {
            return null;
        }

        LooseFill material = fill.Material ?? LooseFill.PolyesterFibre;
        decimal? usual = kind == FillKind.Loose ? Filling.PackedDensity(material) : null;
        return new FillSpecification(
            kind,
            fill.Stock ?? (kind == FillKind.Foam ? "foam" : Words<LooseFill>.Of(material)),
            OrderReading.Decimal(fill.Density) ?? order.Stock(fill.Stock)?.Density ?? usual,
            order.Length(fill.Oversize) ?? (fill.Wrap is null ? order.Practice.FoamOversize : Length.Zero),
            OrderReading.Decimal(fill.Plumpness) ?? UsualPlumpness
        )
        {
            Wrap = fill.Wrap is { } wrap
                ? new WrapSpecification(wrap.Stock ?? OnlyBatting(order), wrap.Sides ?? WrapSides.ThreeSides, wrap.Layers ?? 1)
                : null,
        };
    }

    private static string OnlyBatting(OrderReading order) =>
        order.Stocks.Where(stock => stock.Kind == MaterialKind.Batting).ToArray() is [{ Id: { } only }] ? only : "batting";
}
