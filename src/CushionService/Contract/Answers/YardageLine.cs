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

    /// <summary>Length to buy, in <see cref="SoldUnit"/>.</summary>
    public required double SoldLength { get; init; }

    /// <summary>The unit of sale.</summary>
    public required SaleUnit SoldUnit { get; init; }

    /// <summary>Whether no layout could be sold shorter.</summary>
    public required bool ProvenMinimal { get; init; }

    /// <summary>How the length comes about, in one line.</summary>
    public required string Because { get; init; }
}
