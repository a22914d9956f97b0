using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Nesting;

namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>A piece of the maker's own, by its cut sizes.</summary>
/// <param name="Id">Distinct within the order.</param>
/// <param name="Pointer">Where it is in the order, as a JSON Pointer.</param>
/// <param name="Fabric">The id of its fabric.</param>
/// <param name="Quantity">At least 1.</param>
/// <param name="Width">Across the fabric, above zero.</param>
/// <param name="Length">Along the fabric, above zero.</param>
/// <param name="Rotations">The turns allowed; null for those that keep the grain, or for quarter turns where the fabric may run either
/// way.</param>
/// <param name="Outline">Corners of a simple polygon, counter-clockwise, within the width and length; empty for a rectangle.</param>
public sealed record LoosePieceSpecification(
    string Id,
    string Pointer,
    string Fabric,
    int Quantity,
    Length Width,
    Length Length,
    Rotations? Rotations,
    ImmutableArray<Point> Outline
);
