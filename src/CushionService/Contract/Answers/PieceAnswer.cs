using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Contract.Answers;

/// <summary>A piece to cut.</summary>
public sealed record PieceAnswer
{
    /// <summary>Names the piece: the cushion's id and the part, or the loose piece's own id.</summary>
    public required string Id { get; init; }

    /// <summary>The cushion that it belongs to; null for a loose piece.</summary>
    public string? Cushion { get; init; }

    /// <summary>The cushion's name for people and the part; null where the cushion has none.</summary>
    public string? Label { get; init; }

    /// <summary>What it becomes: top, bottom, front, zipper-upper, …</summary>
    public required string Part { get; init; }

    /// <summary>Its fabric.</summary>
    public required string Fabric { get; init; }

    /// <summary>How many are cut, over all cushions made the same.</summary>
    public required int Quantity { get; init; }

    /// <summary>Cut width as drawn: across the fabric, or along it when railroaded.</summary>
    public required double Width { get; init; }

    /// <summary>Cut length as drawn: along the fabric, or across it when railroaded.</summary>
    public required double Length { get; init; }

    /// <summary>Corners of the cut outline, counter-clockwise; null for a rectangle.</summary>
    public IReadOnlyList<PointAnswer>? Points { get; init; }

    /// <summary>The turns that it may be laid in, from as drawn or, when railroaded, from a quarter turn counter-clockwise.</summary>
    public required Rotations Rotation { get; init; }

    /// <summary>
    /// Which way the fabric runs on it: up the bolt as drawn, or railroaded; either where it may be laid in any quarter turn.
    /// </summary>
    public required Grain Grain { get; init; }

    /// <summary>How its size comes about, in one line.</summary>
    public required string Because { get; init; }

    /// <summary>What to mark on it before sewing, from its lower left corner.</summary>
    public required IReadOnlyList<MarkAnswer> Marks { get; init; }
}
