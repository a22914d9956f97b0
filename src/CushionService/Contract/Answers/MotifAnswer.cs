using CushionService.Engine.Specifications;

namespace CushionService.Contract.Answers;

/// <summary>How the motif of a cloth must stand under its layout, so that matched pieces carry it alike.</summary>
public sealed record MotifAnswer
{
    /// <summary>How far from the start of the layout a row of motifs stands on the cloth's centre line; less than a repeat.</summary>
    public required double Start { get; init; }

    /// <summary>Repeat along the cloth.</summary>
    public required double Length { get; init; }

    /// <summary>Repeat across the cloth; null when nothing is matched across.</summary>
    public double? Width { get; init; }

    /// <summary>How the motif moves from column to column.</summary>
    public required DropKind Drop { get; init; }
}
