using CushionService.Engine.Measures;

namespace CushionService.Contract.Answers;

/// <summary>How much of a fabric to buy.</summary>
public sealed record YardageLine
{
    /// <summary>The fabric.</summary>
    public required string Fabric { get; init; }

    /// <summary>A name for people; null where it has none.</summary>
    public string? Label { get; init; }

    /// <summary>Length that the pieces take, in the order's units.</summary>
    public required double LayoutLength { get; init; }

    /// <summary>Length to buy, in <c>soldUnit</c>.</summary>
    public required double SoldLength { get; init; }

    /// <summary>The unit of sale.</summary>
    public required SaleUnit SoldUnit { get; init; }

    /// <summary>Whether no layout could be sold shorter.</summary>
    public required bool ProvenMinimal { get; init; }

    /// <summary>What is left of the length to buy: the largest rectangles that are empty, the longest first; they may overlap. At most 20,
    /// none under an inch or 25 mm. What finds the repeat and squares the ends is not among them.</summary>
    public required IReadOnlyList<RemnantAnswer> Remnants { get; init; }

    /// <summary>Share of the length to buy times the full width that no piece covers, 0 to 1.</summary>
    public required double Waste { get; init; }

    /// <summary>How the length comes about, in one line.</summary>
    public required string Because { get; init; }
}
