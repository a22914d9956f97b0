using CushionService.Engine.Measures;

namespace CushionService.Contract.Answers;

/// <summary>One line of a cost.</summary>
public sealed record CostLineAnswer
{
    /// <summary>The item.</summary>
    public required string Item { get; init; }

    /// <summary>A name for people; null where it has none.</summary>
    public string? Label { get; init; }

    /// <summary>How much is bought, in <c>unit</c>.</summary>
    public required double Quantity { get; init; }

    /// <summary>The unit of sale.</summary>
    public required SaleUnit Unit { get; init; }

    /// <summary>Price of one unit, as a decimal number.</summary>
    public required string UnitPrice { get; init; }

    /// <summary>What cutting it costs besides, as a decimal number; null for nothing.</summary>
    public string? CutFee { get; init; }

    /// <summary>Quantity × price, rounded half up to the currency's smallest coin, and the cut fee.</summary>
    public required string Amount { get; init; }
}
