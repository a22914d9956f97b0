using CushionService.Engine.Costing;

namespace CushionService.Contract.Answers;

/// <summary>What is charged on top of materials and labour.</summary>
public sealed record CostAdditionAnswer
{
    /// <summary>What for.</summary>
    public required CostAdditionKind Kind { get; init; }

    /// <summary>How much, as a decimal number in whole coins; below 0 where the total is rounded down.</summary>
    public required string Amount { get; init; }

    /// <summary>How the amount comes about, in one line.</summary>
    public required string Because { get; init; }
}
