namespace CushionService.Contract.Answers;

/// <summary>What is laid on an offcut, and what is left of it.</summary>
public sealed record OffcutAnswer
{
    /// <summary>Which offcut of its fabric, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Its dye lot; null where none is given.</summary>
    public string? Lot { get; init; }

    /// <summary>Across, for laying: without selvedges, after shrinkage.</summary>
    public required double Width { get; init; }

    /// <summary>Along, for laying: without what squaring and the start of the repeat take, after shrinkage.</summary>
    public required double Length { get; init; }

    /// <summary>The pieces on it, copies counted over all offcuts.</summary>
    public required IReadOnlyList<PlacementAnswer> Placements { get; init; }

    /// <summary>The largest empty rectangles from 1 in each way, the largest first; no two overlap. At most 5.</summary>
    public required IReadOnlyList<EmptyAnswer> Left { get; init; }
}
