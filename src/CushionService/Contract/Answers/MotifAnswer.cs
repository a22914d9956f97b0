using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Contract.Answers;

/// <summary>How the motif of a fabric must be under its layout, so that matched pieces carry it at the same place.</summary>
public sealed record MotifAnswer
{
    /// <summary>From the left edge of the usable width to a column of motifs; null when nothing is matched across.</summary>
    public double? X { get; init; }

    /// <summary>How far from the start of the layout a row of motifs is in that column; 0 when nothing is matched along.</summary>
    public required double Start { get; init; }

    /// <summary>Whether the order says where the motif is. If not, the layout is the longest of those for all positions.</summary>
    public required bool Known { get; init; }

    /// <summary>Repeat along the fabric as it is laid out, after the wash; null when nothing is matched along.</summary>
    public double? Length { get; init; }

    /// <summary>Repeat across the fabric as it is laid out, after the wash; null when nothing is matched across.</summary>
    public double? Width { get; init; }

    /// <summary>How the motif moves from column to column.</summary>
    public required DropKind Drop { get; init; }
}
