using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Contract.Orders;

/// <summary>The finished outline of a face, measured on the seam line, seen from above with the front towards one. Which fields apply
/// depends on the kind.</summary>
public sealed record Outline
{
    /// <summary>The kind of outline.</summary>
    [Required]
    public OutlineKind? Kind { get; init; }

    /// <summary>From left to right over all; of every kind but circle, trapezoid and polygons.</summary>
    [LengthRange("2 in", "240 in")]
    public Measure? Width { get; init; }

    /// <summary>From front to back over all; of every kind but circle, half-round and polygons.</summary>
    [LengthRange("2 in", "240 in")]
    public Measure? Depth { get; init; }

    /// <summary>Diameter of a circle.</summary>
    [LengthRange("2 in", "240 in")]
    public Measure? Diameter { get; init; }

    /// <summary>Radius of the corners of a rounded rectangle, or of a polygon; a polygon's are sharp when left out.</summary>
    [LengthRange("1/8 in", "60 in")]
    public Measure? CornerRadius { get; init; }

    /// <summary>Width of a trapezoid's front.</summary>
    [LengthRange("1 in", "240 in")]
    public Measure? FrontWidth { get; init; }

    /// <summary>Width of a trapezoid's back.</summary>
    [LengthRange("1 in", "240 in")]
    public Measure? BackWidth { get; init; }

    /// <summary>
    /// How far a trapezoid's left back corner lies right of its left front corner, negative when left of it; centred when left out.
    /// </summary>
    [LengthRange("-240 in", "240 in")]
    public Measure? BackOffset { get; init; }

    /// <summary>How far each ear of a tee extends.</summary>
    [LengthRange("1/2 in", "60 in")]
    public Measure? EarWidth { get; init; }

    /// <summary>From the front to the back of a tee's ears.</summary>
    [LengthRange("1/2 in", "60 in")]
    public Measure? EarDepth { get; init; }

    /// <summary>Width of what an ell lacks at a back corner, or a U in the middle of its back.</summary>
    [LengthRange("1 in", "240 in")]
    public Measure? NotchWidth { get; init; }

    /// <summary>Depth of what an ell or a U lacks.</summary>
    [LengthRange("1 in", "240 in")]
    public Measure? NotchDepth { get; init; }

    /// <summary>The side on which an ell lacks its back corner: right or left; right when left out.</summary>
    public Engine.Specifications.Outlines.Side? NotchSide { get; init; }

    /// <summary>Number of sides of a regular polygon.</summary>
    [NumberRange(3, 24)]
    public int? SideCount { get; init; }

    /// <summary>Length of each side of a regular polygon.</summary>
    [LengthRange("1 in", "240 in")]
    public Measure? SideLength { get; init; }

    /// <summary>Corners of a polygon that does not cross itself, in order either way round.</summary>
    [NumberRange(3, 100)]
    public IReadOnlyList<Corner>? Points { get; init; }

    /// <summary>The radius of each corner, 0 for a sharp one: of a rectangle, counter-clockwise from the front left; of a polygon, in the
    /// order of its points. In place of one corner radius for all.</summary>
    [NumberRange(3, 100)]
    [LengthRange("0 in", "60 in")]
    public IReadOnlyList<Measure>? Corners { get; init; }

    /// <summary>Sides of a polygon that are arcs; straight when left out.</summary>
    [NumberRange(1, 100)]
    public IReadOnlyList<OutlineArc>? Arcs { get; init; }
}
