using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Engine.Costing;

/// <summary>What is charged on top of materials and labour.</summary>
/// <param name="Kind">What for.</param>
/// <param name="Amount">How much, in whole coins; below 0 where the price is rounded down, and of a discount.</param>
/// <param name="Because">How the amount comes about, in one line.</param>
public sealed record CostAddition(CostAdditionKind Kind, Money Amount, Message Because)
{
    /// <summary>By what it is shared among the cushions.</summary>
    public CostBasis Basis { get; init; } = CostBasis.All;

    /// <summary>What customers read; null where the kind says it.</summary>
    public string? Label { get; init; }

    /// <summary>How many or how much, of a line or a fee; null for another addition.</summary>
    public decimal? Quantity { get; init; }

    /// <summary>Price of one, of a line or a fee; null for another addition.</summary>
    public Money? UnitPrice { get; init; }
}
