using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>A stock that parts of an order may name.</summary>
/// <param name="Id">Its name; null where it has none.</param>
/// <param name="Kind">What it is; null where it does not say.</param>
/// <param name="Density">Its density in kg/m³; null where it is not known, or was refused.</param>
/// <param name="HasDensity">Whether the order or the price book gives it a density.</param>
/// <remarks>It has what other parts ask of a stock, whether or not the stock itself passed: an error in its price does not make its name
/// unknown.</remarks>
internal sealed record NamedStock(string? Id, MaterialKind? Kind, decimal? Density, bool HasDensity);
