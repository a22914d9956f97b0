using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Contract.Orders;

/// <summary>How a total is rounded.</summary>
public sealed record PriceRounding
{
    /// <summary>Totals are multiples of it: a decimal number as text, above 0, in whole coins.</summary>
    [Required]
    [RegularExpression(Amount.Pattern)]
    public string? Step { get; init; }

    /// <summary>Which way; to the nearest when left out.</summary>
    public RoundingDirection? Direction { get; init; }
}
