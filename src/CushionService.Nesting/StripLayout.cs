using System.Collections.Immutable;

namespace CushionService.Nesting;

/// <summary>The answer to a <see cref="StripProblem"/>; it has passed the audit.</summary>
public sealed record StripLayout
{
    /// <summary>Length used, in grid units.</summary>
    public required long Length { get; init; }

    /// <summary>A length, in grid units, that no layout can beat.</summary>
    public required long LowerBound { get; init; }

    /// <summary>Whether no layout could be sold shorter: the lower bound is sold as the length is.</summary>
    public required bool ProvenMinimal { get; init; }

    /// <summary>The argument behind <see cref="ProvenMinimal"/>; <see cref="ProofKind.None"/> when not proven.</summary>
    public required ProofKind Proof { get; init; }

    /// <summary>The proof's figures in one line that a caller can check; empty when not proven.</summary>
    public string ProofFigures { get; init; } = "";

    /// <summary>Every copy of every piece, exactly once.</summary>
    public required ImmutableArray<Placement> Placements { get; init; }

    /// <summary>Search steps spent.</summary>
    public required long Steps { get; init; }
}
