using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>Something to buy.</summary>
/// <param name="Item">What prices name it by.</param>
/// <param name="Kind">What kind of thing it is.</param>
/// <param name="Quantity">How much, in units of sale, exact.</param>
/// <param name="Unit">The unit of sale.</param>
/// <param name="Because">How the quantity comes about, in one line.</param>
public sealed record Material(string Item, MaterialKind Kind, Fraction Quantity, SaleUnit Unit, Message Because)
{
    /// <summary>A name for people; null where it has none.</summary>
    public string? Label { get; init; }

    /// <summary>Sizes of one; null where it has none.</summary>
    public MaterialSize? Size { get; init; }

    /// <summary>Length of one, such as a zipper; null where it has none.</summary>
    public Length? Length { get; init; }

    /// <summary>Whether each is made to a size of its own, so that a price for each says nothing of it.</summary>
    public bool IsMadeToSize { get; init; }

    /// <summary>What is sawn of it; empty for all but foam.</summary>
    public ImmutableArray<FoamCut> Cuts { get; init; } = [];

    /// <summary>How much of it each cushion takes; empty for what is allotted by the area of the pieces, such as fabric.</summary>
    public ImmutableArray<CushionUse> Uses { get; init; } = [];

    /// <summary>The same for one cushion line alone.</summary>
    internal Material For(string cushion) => this with { Uses = [new CushionUse(cushion, 1)] };

    /// <summary>What it weighs as it goes into the cushions; null where no density is known.</summary>
    public Mass? Weight { get; init; }
}
