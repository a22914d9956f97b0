using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Contract.Orders;

/// <summary>A fee beyond materials and labour.</summary>
public sealed record Charge
{
    /// <summary>What customers read; at most 200 characters.</summary>
    [Required]
    [MaxLength(200)]
    public string? Label
    {
        get;
        init => field = string.IsNullOrWhiteSpace(value) ? null : value;
    }

    /// <summary>How much each time: a decimal number as text.</summary>
    [Required]
    [RegularExpression(Orders.Amount.Pattern)]
    public string? Amount { get; init; }

    /// <summary>How often it is charged; once for the order when left out.</summary>
    public ChargeBasis? Per { get; init; }
}
