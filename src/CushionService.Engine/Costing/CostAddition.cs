using CushionService.Engine.Measures;

namespace CushionService.Engine.Costing;

/// <summary>What is charged on top of materials and labour.</summary>
/// <param name="Kind">What for.</param>
/// <param name="Amount">How much, in whole coins; below 0 where the price is rounded down.</param>
/// <param name="Because">How the amount comes about, in one line.</param>
public sealed record CostAddition(CostAdditionKind Kind, Money Amount, string Because)
{
    /// <summary>Whether it is charged by the hour of labour.</summary>
    public bool IsHourly { get; init; }
}
