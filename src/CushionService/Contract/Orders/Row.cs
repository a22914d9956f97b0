using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>Cushions that lie beside each other, so that the fabric runs one way on all of them.</summary>
public sealed record Row
{
    /// <summary>Names the row within the order.</summary>
    [Required]
    [RegularExpression(Identifier.Pattern)]
    public string? Id { get; init; }

    /// <summary>The ids of its cushions, from left to right; a cushion lies in one row.</summary>
    [Required]
    [NumberRange(1, 200)]
    public IReadOnlyList<string>? Cushions { get; init; }
}
