using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>A side of a polygon that is an arc, by its bulge or its radius. The corners at its ends are sharp.</summary>
public sealed record OutlineArc
{
    /// <summary>The side: 1 is from the first point to the second, and so on; the last is back to the first.</summary>
    [Required]
    [NumberRange(1, 100)]
    public int? Side { get; init; }

    /// <summary>How far the middle of the arc is outside the straight line between the points; negative for an arc that hollows the
    /// outline. At most half the line.</summary>
    [LengthRange("-120 in", "120 in")]
    public Measure? Bulge { get; init; }

    /// <summary>Radius of the arc; negative for one that hollows the outline. At least half the line between the points.</summary>
    [LengthRange("-2000 in", "2000 in")]
    public Measure? Radius { get; init; }
}
