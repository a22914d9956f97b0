using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Measures;

namespace CushionService.Contract.Orders;

/// <summary>A price in the order's currency, without tax.</summary>
public sealed record Price
{
    /// <summary>A decimal number as text, at least 0, with at most 6 decimals: <c>"18.90"</c>.</summary>
    [Required]
    [RegularExpression(Orders.Amount.Pattern)]
    public string? Amount { get; init; }

    /// <summary>What the amount buys.</summary>
    [Required]
    public SaleUnit? Per { get; init; }

    /// <summary>Prices of larger quantities, by rising quantity; none when left out.</summary>
    [NumberRange(0, 20)]
    public IReadOnlyList<PriceBreak>? Breaks { get; init; }

    /// <summary>What the shop charges for each cut: a decimal number as text; nothing when left out.</summary>
    [RegularExpression(Orders.Amount.Pattern)]
    public string? CutFee { get; init; }
}
