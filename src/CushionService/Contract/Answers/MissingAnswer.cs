using CushionService.Engine.Measures;

namespace CushionService.Contract.Answers;

/// <summary>What must be bought of a fabric beyond what is on hand.</summary>
public sealed record MissingAnswer
{
    /// <summary>The fabric.</summary>
    public required string Fabric { get; init; }

    /// <summary>A length of its full width that holds what found no place, in the order's units.</summary>
    public required double Length { get; init; }

    /// <summary>What is bought for that, in the unit of sale.</summary>
    public required double SoldLength { get; init; }

    /// <summary>The unit of sale.</summary>
    public required SaleUnit SoldUnit { get; init; }

    /// <summary>What that costs; null where the fabric has no price.</summary>
    public string? Amount { get; init; }
}
