using CushionService.Nesting;

namespace CushionService.Contract.Answers;

/// <summary>A piece to cut.</summary>
public sealed record PieceAnswer
{
    /// <summary>Names the piece: the cushion's id and the part, or the loose piece's own id.</summary>
    public required string Id { get; init; }

    /// <summary>The cushion that it belongs to; null for a loose piece.</summary>
    public string? Cushion { get; init; }

    /// <summary>What it becomes: top, bottom, front, zipper-upper, …</summary>
    public required string Part { get; init; }

    /// <summary>Its fabric.</summary>
    public required string Fabric { get; init; }

    /// <summary>How many are cut, over all cushions made alike.</summary>
    public required int Quantity { get; init; }

    /// <summary>Cut width, across the fabric.</summary>
    public required double Width { get; init; }

    /// <summary>Cut length, along the fabric.</summary>
    public required double Length { get; init; }

    /// <summary>Corners of the cut outline, counter-clockwise; null for a rectangle.</summary>
    public IReadOnlyList<PointAnswer>? Points { get; init; }

    /// <summary>The turns that it may be laid in.</summary>
    public required Rotations Rotation { get; init; }

    /// <summary>How its size comes about, in one line.</summary>
    public required string Because { get; init; }

    /// <summary>What to mark on it before sewing, from its lower left corner.</summary>
    public required IReadOnlyList<MarkAnswer> Marks { get; init; }
}
