using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>A tax on the price.</summary>
public sealed record Tax
{
    /// <summary>What customers read; at most 200 characters; tax when left out or blank.</summary>
    [MaxLength(200)]
    public string? Label
    {
        get;
        init => field = string.IsNullOrWhiteSpace(value) ? null : value;
    }

    /// <summary>Share of the price (0.2 is 20 %).</summary>
    [Required]
    [NumberRange(0, 1)]
    public double? Rate { get; init; }
}
