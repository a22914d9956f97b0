using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>A stock that parts of an order may name.</summary>
/// <param name="Id">Its name; null where it has none.</param>
/// <param name="Kind">What it is; null where it does not say.</param>
/// <param name="Density">Its density in kg/m³; null where it is not known, or was refused.</param>
/// <param name="HasDensity">Whether the order or the price book gives it a density.</param>
/// <remarks>It has what other parts ask of a stock, whether or not the stock itself passed: an error in its price does not make its name
/// unknown.</remarks>
internal sealed record NamedStock(string? Id, MaterialKind? Kind, decimal? Density, bool HasDensity)
{
    /// <summary>Its name for people; null where it has none.</summary>
    public string? Label { get; init; }

    /// <summary>What people call it: its label, or else its id.</summary>
    public string Name => Label ?? Id ?? "";

    /// <summary>Its width and depth, or twice its diameter; null where it has none.</summary>
    public (Length Width, Length Depth)? Size { get; init; }

    /// <summary>What it is sold by; null where it has no rule of sale.</summary>
    public SaleUnit? Sold { get; init; }

    /// <summary>How much larger than the cover it is cut, as foam; null where it does not say.</summary>
    public Length? Oversize { get; init; }

    /// <summary>Its firmness in newtons, as foam; null where it is not known.</summary>
    public decimal? Firmness { get; init; }

    /// <summary>Whether nothing says what a piece of it weighs, though it is sold by weight.</summary>
    /// <param name="own">The density that whatever names it gives; null for none.</param>
    public bool LacksDensity(double? own) => Sold is SaleUnit.Lb or SaleUnit.Kg && own is null && !HasDensity;

    /// <summary>What other parts ask of a stock that was read.</summary>
    public static (Length Width, Length Depth)? SizeOf(StockSpecification? stock) =>
        (stock?.Width ?? stock?.Diameter) is { } width && (stock!.Depth ?? stock.Diameter) is { } depth ? (width, depth) : null;
}
