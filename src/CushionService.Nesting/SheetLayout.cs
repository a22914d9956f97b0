using System.Collections.Immutable;

namespace CushionService.Nesting;

/// <summary>The answer to a <see cref="SheetProblem"/>; it has passed the audit.</summary>
public sealed record SheetLayout
{
    /// <summary>The sheets used: for each, its index into the problem's sheets.</summary>
    public required ImmutableArray<int> Sheets { get; init; }

    /// <summary>Sum of the costs of the sheets used.</summary>
    public required long Cost { get; init; }

    /// <summary>A cost that no layout can beat.</summary>
    public required long LowerBound { get; init; }

    /// <summary>Every copy that found a place, exactly once.</summary>
    public required ImmutableArray<Placement> Placements { get; init; }

    /// <summary>Copies for which the available sheets had no room, as (piece, copy); empty when everything is laid.</summary>
    public required ImmutableArray<(int Piece, int Copy)> Unplaced { get; init; }

    /// <summary>Search steps spent.</summary>
    public required long Steps { get; init; }
}
