using System.ComponentModel.DataAnnotations;
using CushionService.Nesting;

namespace CushionService.Contract.Orders;

/// <summary>A piece of the maker's own, by its cut sizes.</summary>
public sealed record LoosePiece
{
    /// <summary>Names the piece within the order.</summary>
    [Required]
    [RegularExpression(Identifier.Pattern)]
    public string? Id { get; init; }

    /// <summary>Its fabric; may be left out when the order has one fabric.</summary>
    public string? Fabric { get; init; }

    /// <summary>How many are cut; 1 when left out.</summary>
    [NumberRange(1, 5000, Default = "1")]
    public int? Quantity { get; init; }

    /// <summary>Cut width, across the fabric; with a length, unless the piece has points.</summary>
    [LengthRange("1/8 in", "240 in")]
    public Measure? Width { get; init; }

    /// <summary>Cut length, along the fabric.</summary>
    [LengthRange("1/8 in", "2000 in")]
    public Measure? Length { get; init; }

    /// <summary>
    /// Corners of a simple polygon in place of width and length, in order either way round; x across the fabric, y along it.
    /// </summary>
    [NumberRange(3, 500)]
    public IReadOnlyList<Corner>? Points { get; init; }

    /// <summary>
    /// The turns it may be laid in; those of its fabric when left out. One-way fabric allows none, whatever the piece would.
    /// </summary>
    public Rotations? Rotation { get; init; }
}
