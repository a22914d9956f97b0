using CushionService.Engine.Costing;

namespace CushionService.Contract.Answers;

/// <summary>What is charged on top of materials and labour.</summary>
public sealed record CostAdditionAnswer
{
    /// <summary>What for.</summary>
    public required CostAdditionKind Kind { get; init; }

    /// <summary>How much, as a decimal number in whole coins; below 0 where the total is rounded down, and of a discount.</summary>
    public required string Amount { get; init; }

    /// <summary>What customers read; null where the kind says it.</summary>
    public string? Label { get; init; }

    /// <summary>How many or how much, of a line or a charge; null for another addition.</summary>
    public double? Quantity { get; init; }

    /// <summary>Price of one, of a line or a charge, as a decimal number; null for another addition.</summary>
    public string? UnitPrice { get; init; }

    /// <summary>How the amount comes about, in one line.</summary>
    public required string Because { get; init; }
}
