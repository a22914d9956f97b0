using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>A length, an offcut or a hide of a fabric that one has: a rectangle, or the outline of what is no rectangle.</summary>
public sealed record Offcut
{
    /// <summary>Across the fabric, selvedges included where it has them; no wider than the fabric. With a length, unless it has
    /// points.</summary>
    [LengthRange("1 in", "240 in")]
    public Measure? Width { get; init; }

    /// <summary>Along the fabric.</summary>
    [LengthRange("1 in", "4000 in")]
    public Measure? Length { get; init; }

    /// <summary>Corners of a hide's or a panel's outline in place of width and length, in order either way round, its flaws left out; x
    /// across, y along.</summary>
    [NumberRange(3, 200)]
    public IReadOnlyList<Corner>? Points { get; init; }

    /// <summary>How many of this size there are; 1 when left out.</summary>
    [NumberRange(1, 20, Default = "1")]
    public int? Quantity { get; init; }

    /// <summary>
    /// The dye lot that it was cut from; the fabric's when left out, and without one a lot of its own. At most 64 characters.
    /// </summary>
    [MaxLength(64)]
    public string? Lot { get; init; }
}
