using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Measures;

namespace CushionService.Contract.Orders;

/// <summary>The price of an item that is bought besides cloth.</summary>
public sealed record ItemPrice
{
    /// <summary>The item, as the answer's materials name it.</summary>
    [Required]
    [RegularExpression(Identifier.Pattern)]
    public string? Item { get; init; }

    /// <summary>A decimal number as text, at least 0, with at most 6 decimals: <c>"4.20"</c>.</summary>
    [Required]
    [RegularExpression(@"^\d{1,9}(\.\d{1,6})?$")]
    public string? Amount { get; init; }

    /// <summary>What the amount buys; the item is sold by this unit.</summary>
    [Required]
    public SaleUnit? Per { get; init; }
}
