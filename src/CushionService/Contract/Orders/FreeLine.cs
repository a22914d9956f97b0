using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>Something else that is sold with an order, such as its delivery.</summary>
public sealed record FreeLine
{
    /// <summary>What customers read; at most 200 characters.</summary>
    [Required]
    [MaxLength(200)]
    public string? Label
    {
        get;
        init => field = string.IsNullOrWhiteSpace(value) ? null : value;
    }

    /// <summary>How many, or how much; 1 when left out.</summary>
    [NumberRange(0.001, 10000, Default = "1")]
    public double? Quantity { get; init; }

    /// <summary>The price of one, without tax: a decimal number as text.</summary>
    [Required]
    [RegularExpression(Orders.Amount.Pattern)]
    public string? Amount { get; init; }
}
