using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Materials;

/// <summary>Pieces of foam of one size that are sawn for one cushion line.</summary>
/// <param name="Cushion">The cushion's id.</param>
/// <param name="Quantity">How many, at least 1.</param>
/// <param name="Shape">The outline that they have.</param>
/// <param name="Size">Extent of one.</param>
/// <param name="Area">Area of its base, in square millimetres.</param>
/// <param name="Template">Corners of its base, counter-clockwise; empty for a rectangle.</param>
public sealed record FoamCut(
    string Cushion,
    int Quantity,
    OutlineKind Shape,
    MaterialSize Size,
    decimal Area,
    ImmutableArray<Point> Template
);
