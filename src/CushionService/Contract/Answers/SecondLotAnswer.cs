using CushionService.Engine.Measures;

namespace CushionService.Contract.Answers;

/// <summary>What is bought of another dye lot where the fabric on hand is not enough, so that what is seen of one cushion is of one
/// lot.</summary>
public sealed record SecondLotAnswer
{
    /// <summary>The fabric.</summary>
    public required string Fabric { get; init; }

    /// <summary>The cushions that are cut whole from what is on hand.</summary>
    public required IReadOnlyList<CushionCountAnswer> OnHand { get; init; }

    /// <summary>The cushions that are cut whole from the other lot.</summary>
    public required IReadOnlyList<CushionCountAnswer> Bought { get; init; }

    /// <summary>All pieces that are cut from the other lot.</summary>
    public required IReadOnlyList<UnplacedAnswer> Pieces { get; init; }

    /// <summary>A length of the fabric's full width that holds them, in the order's units.</summary>
    public required double Length { get; init; }

    /// <summary>What is bought for that, in the unit of sale.</summary>
    public required double SoldLength { get; init; }

    /// <summary>The unit of sale.</summary>
    public required SaleUnit SoldUnit { get; init; }

    /// <summary>What that costs; null where the fabric has no price.</summary>
    public string? Amount { get; init; }

    /// <summary>What is cut from which lot, in one line.</summary>
    public required string Because { get; init; }
}
