using System.Collections.Immutable;

namespace CushionService.Nesting;

/// <summary>A piece to be laid, in one or more copies.</summary>
public sealed record NestingPiece
{
    /// <summary>Extent across the strip as drawn, in grid units, above 0.</summary>
    public required long Width { get; init; }

    /// <summary>Extent along the strip as drawn, in grid units, above 0.</summary>
    public required long Length { get; init; }

    /// <summary>Number of copies, at least 1.</summary>
    public int Quantity { get; init; } = 1;

    /// <summary>The turns that are allowed.</summary>
    public Rotations Rotations { get; init; } = Rotations.None;

    /// <summary>The corners of a simple polygon, counter-clockwise, whose bounding box is (0, 0) to
    /// (<see cref="Width"/>, <see cref="Length"/>); empty for a rectangle.</summary>
    public ImmutableArray<GridPoint> Outline { get; init; } = [];

    /// <summary>The phase of the repeat on which every copy must lie; null when it may lie anywhere.
    /// An aligned piece has <see cref="Rotations"/> of <see cref="Rotations.None"/>.</summary>
    public Alignment? Alignment { get; init; }
}
