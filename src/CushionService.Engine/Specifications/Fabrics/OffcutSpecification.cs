using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>A length or an offcut of a fabric that one has.</summary>
/// <param name="Width">Across the fabric, above zero.</param>
/// <param name="Length">Along the fabric, above zero.</param>
/// <param name="Lot">The dye lot that it was cut from; null when unknown.</param>
public sealed record OffcutSpecification(Length Width, Length Length, string? Lot = null)
{
    /// <summary>Corners of a simple polygon, counter-clockwise, within the width and length: a hide, or a panel that is no rectangle; empty
    /// for a rectangle.</summary>
    public ImmutableArray<Point> Outline { get; init; } = [];
}
