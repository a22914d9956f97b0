using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>The price of an item from a quantity upwards, for all that is bought of it.</summary>
public sealed record PriceBreak
{
    /// <summary>The least quantity that it holds for, in the unit of the price.</summary>
    [Required]
    [NumberRange(0.001, 1_000_000)]
    public Quantity? From { get; init; }

    /// <summary>Price of one unit: a decimal number as text, at least 0, with at most 6 decimals.</summary>
    [Required]
    [RegularExpression(Orders.Amount.Pattern)]
    public string? Amount { get; init; }
}
