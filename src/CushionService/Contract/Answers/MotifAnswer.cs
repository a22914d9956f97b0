using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Contract.Answers;

/// <summary>How the motif of a fabric must stand under its layout, so that matched pieces carry it alike.</summary>
public sealed record MotifAnswer
{
    /// <summary>How far from the start of the layout a row of motifs is on the fabric's centre line; less than a repeat.</summary>
    public required double Start { get; init; }

    /// <summary>Repeat along the fabric as it is laid out, after the wash.</summary>
    public required double Length { get; init; }

    /// <summary>Repeat across the fabric as it is laid out, after the wash; null when nothing is matched across.</summary>
    public double? Width { get; init; }

    /// <summary>How the motif moves from column to column.</summary>
    public required DropKind Drop { get; init; }
}
