using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Measures;

namespace CushionService.Contract.Orders;

/// <summary>A price in the order's currency, without tax.</summary>
public sealed record Price
{
    /// <summary>A decimal number as text, at least 0, with at most 6 decimals: <c>"18.90"</c>.</summary>
    [Required]
    [RegularExpression(@"^\d{1,9}(\.\d{1,6})?$")]
    public string? Amount { get; init; }

    /// <summary>What the amount buys.</summary>
    [Required]
    public SaleUnit? Per { get; init; }
}
