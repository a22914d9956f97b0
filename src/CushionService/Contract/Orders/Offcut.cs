using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>A length or an offcut of a fabric that one has.</summary>
public sealed record Offcut
{
    /// <summary>Across the fabric, selvedges included where it has them; no wider than the fabric.</summary>
    [Required]
    [LengthRange("1 in", "240 in")]
    public Measure? Width { get; init; }

    /// <summary>Along the fabric.</summary>
    [Required]
    [LengthRange("1 in", "4000 in")]
    public Measure? Length { get; init; }

    /// <summary>How many of this size there are; 1 when left out.</summary>
    [NumberRange(1, 20, Default = "1")]
    public int? Quantity { get; init; }

    /// <summary>
    /// The dye lot that it was cut from; the fabric's when left out, and without one a lot of its own. At most 64 characters.
    /// </summary>
    [MaxLength(64)]
    public string? Lot { get; init; }
}
