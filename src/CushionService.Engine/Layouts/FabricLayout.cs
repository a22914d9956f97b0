using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Layouts;

/// <summary>How the pieces of one fabric lie; it has passed the audit.</summary>
public sealed record FabricLayout
{
    /// <summary>The fabric.</summary>
    public required FabricSpecification Fabric { get; init; }

    /// <summary>How far from the start of the layout a row of motifs must stand on the fabric's centre line, less than a repeat; zero
    /// without one.</summary>
    public Length MotifStart { get; init; }

    /// <summary>Length that the pieces take.</summary>
    public required Length Length { get; init; }

    /// <summary>A length that no layout can beat.</summary>
    public required Length LowerBound { get; init; }

    /// <summary>Whether no layout could be sold shorter.</summary>
    public required bool ProvenMinimal { get; init; }

    /// <summary>The argument that proves it.</summary>
    public required ProofKind Proof { get; init; }

    /// <summary>The figures of the proof; empty when there is none.</summary>
    public required string ProofFigures { get; init; }

    /// <summary>Every copy of every piece, once.</summary>
    public required ImmutableArray<LaidPiece> Placements { get; init; }

    /// <summary>Search steps spent.</summary>
    public required long Steps { get; init; }

    /// <summary>Area that the pieces cover.</summary>
    public Area Covered => Placements.Aggregate(default(Area), (sum, laid) => sum + laid.Piece.Area);

    /// <summary>Share of usable width × length that the pieces cover, 0 to 1.</summary>
    public double Used => Covered.ShareOf(Area.Of(Fabric.UsableWidth, Length));
}
