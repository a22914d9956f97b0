using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>An item that is bought, and how it is sold.</summary>
/// <param name="Item">What prices name it by.</param>
/// <param name="Kind">What kind of thing it is.</param>
/// <param name="Measured">What its needs are counted in.</param>
/// <param name="Sale">How it is sold.</param>
/// <remarks>Equality is by value: needs with equal goods are added up into one line of the bill.</remarks>
internal sealed record Goods(string Item, MaterialKind Kind, Dimension Measured, UnitSale Sale)
{
    /// <summary>What one spool, roll, bag or can holds, in base units; null for what is sold by the measure itself.</summary>
    public decimal? Content { get; init; }

    /// <summary>A name for people; null where it has none.</summary>
    public string? Label { get; init; }

    /// <summary>Sizes of one; null where it has none.</summary>
    public MaterialSize? Size { get; init; }

    /// <summary>Length of one; null where it has none.</summary>
    public Length? Length { get; init; }

    /// <summary>Whether each is made to a size of its own, so that a price for each says nothing of it.</summary>
    public bool IsMadeToSize { get; init; }

    /// <summary>What keeps items of one name on lines of their own, such as a size or a cushion's id; null for nothing.</summary>
    public object? Apart { get; init; }

    /// <summary>Base units in one unit of sale.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The unit of sale does not measure what is needed.</exception>
    public decimal PerUnit => Content ?? Measured.In(Sale.Unit);
}
