using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Contract.Orders;

/// <summary>The repeat of a fabric's motif.</summary>
public sealed record Repeat
{
    /// <summary>Along the fabric.</summary>
    [Required]
    [LengthRange("1/4 in", "72 in")]
    public Measure? Length { get; init; }

    /// <summary>Across the fabric, one motif on its centre line; nothing is matched across when left out.</summary>
    [LengthRange("1/4 in", "120 in")]
    public Measure? Width { get; init; }

    /// <summary>How the motif moves from column to column; straight when left out.</summary>
    public DropKind? Drop { get; init; }
}
