using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Fabrics;

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

    /// <summary>How the print lies on its cushions; the same on each when left out.</summary>
    public RowPrint? Print { get; init; }

    /// <summary>The id of a row of seats that this is the row of backs of: its print runs on from theirs, across and upwards. For a
    /// continuous print.</summary>
    [RegularExpression(Identifier.Pattern)]
    public string? Follows { get; init; }
}
