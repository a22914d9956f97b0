using System.Collections.Immutable;

namespace CushionService.Nesting;

/// <summary>Lay all pieces on stock sheets, as cheaply as possible.</summary>
/// <remarks>A sheet has no repeat, no flaws and no grain of its own: pieces turn as their
/// <see cref="Rotations"/> say.</remarks>
public sealed record SheetProblem
{
    /// <summary>What to lay; pieces are not aligned here.</summary>
    public required ImmutableArray<NestingPiece> Pieces { get; init; }

    /// <summary>The sheets that can be had; at least one.</summary>
    public required ImmutableArray<StockSheet> Sheets { get; init; }
}
