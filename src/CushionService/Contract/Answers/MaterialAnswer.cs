using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Contract.Answers;

/// <summary>Something to buy.</summary>
public sealed record MaterialAnswer
{
    /// <summary>The item, as prices name it.</summary>
    public required string Item { get; init; }

    /// <summary>A name for people; null where it has none.</summary>
    public string? Label { get; init; }

    /// <summary>What kind of thing it is.</summary>
    public required MaterialKind Kind { get; init; }

    /// <summary>How much, in <c>unit</c>.</summary>
    public required double Quantity { get; init; }

    /// <summary>The unit of sale.</summary>
    public required SaleUnit Unit { get; init; }

    /// <summary>Sizes of one; null where it has none.</summary>
    public MaterialSizeAnswer? Size { get; init; }

    /// <summary>Length of one, such as a zipper or what a spool holds, in the order's units; null where it has none.</summary>
    public double? Length { get; init; }

    /// <summary>What is sawn of it, by cushion; empty for all but foam.</summary>
    public required IReadOnlyList<FoamCutAnswer> Cuts { get; init; }

    /// <summary>How the quantity comes about, in one line.</summary>
    public required string Because { get; init; }

    /// <summary>What it weighs as it goes into the cushions, in <c>weightUnit</c>; null where no density is known.</summary>
    public double? Weight { get; init; }

    /// <summary>Pounds in an order of inches, kilograms in another; null without a weight.</summary>
    public SaleUnit? WeightUnit { get; init; }
}
