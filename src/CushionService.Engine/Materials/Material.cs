using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Materials;

/// <summary>Something to buy.</summary>
/// <param name="Item">What prices name it by.</param>
/// <param name="Kind">What kind of thing it is.</param>
/// <param name="Quantity">How much, in units of sale.</param>
/// <param name="Unit">The unit of sale.</param>
/// <param name="Because">How the quantity comes about, in one line.</param>
public sealed record Material(string Item, MaterialKind Kind, decimal Quantity, SaleUnit Unit, string Because)
{
    /// <summary>What each cushion needs of it, before rounding; empty for cloth, of which a cushion's share is the area of its pieces.</summary>
    public ImmutableArray<MaterialShare> Shares { get; init; } = [];

    /// <summary>What it weighs as it goes into the cushions; null where no density is known.</summary>
    public Mass? Weight { get; init; }
}
