using CushionService.Nesting;

namespace CushionService.Contract.Answers;

/// <summary>How the pieces of one fabric lie.</summary>
public sealed record LayoutAnswer
{
    /// <summary>The fabric.</summary>
    public required string Fabric { get; init; }

    /// <summary>The fabric's name for people; null where it has none.</summary>
    public string? Label { get; init; }

    /// <summary>Usable width: without selvedges, after shrinkage.</summary>
    public required double Width { get; init; }

    /// <summary>Length that the pieces take.</summary>
    public required double Length { get; init; }

    /// <summary>A length that no layout can beat.</summary>
    public required double LowerBound { get; init; }

    /// <summary>Whether no layout could be sold shorter.</summary>
    public required bool ProvenMinimal { get; init; }

    /// <summary>The argument that proves it.</summary>
    public required ProofKind Proof { get; init; }

    /// <summary>The figures of the proof, which a caller can check; null when there is none.</summary>
    public ProofFiguresAnswer? ProofFigures { get; init; }

    /// <summary>The proof in a sentence; empty when there is none.</summary>
    public required string ProofBecause { get; init; }

    /// <summary>Share of width × length that the pieces cover, 0 to 1.</summary>
    public required double Used { get; init; }

    /// <summary>How the fabric's motif must be under the layout; null when nothing is matched to a repeat.</summary>
    public MotifAnswer? Motif { get; init; }

    /// <summary>Every copy of every piece, once.</summary>
    public required IReadOnlyList<PlacementAnswer> Placements { get; init; }
}
