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

    /// <summary>Length on the bolt that is bought to find the motif: a repeat where it is unknown along, else nothing.</summary>
    public Length Start { get; init; }

    /// <summary>Where a column of motifs is under the layout, from the left edge of the usable width; null where nothing is
    /// matched.</summary>
    public Length? MotifX { get; init; }

    /// <summary>How far from the start of the layout a row of motifs is in that column; zero where nothing is matched.</summary>
    public Length MotifStart { get; init; }

    /// <summary>Length that the pieces would take at the best position of a motif that is unknown; null where it is known, or nothing is
    /// matched.</summary>
    public Length? ShortestKnown { get; init; }

    /// <summary>Length that the pieces take.</summary>
    public required Length Length { get; init; }

    /// <summary>A length that no layout can beat.</summary>
    public required Length LowerBound { get; init; }

    /// <summary>A length that no layout can beat even where nothing is matched, or where the motif is where it suits best.</summary>
    public Length FreeBound
    {
        get => field == default ? LowerBound : field;
        init;
    }

    /// <summary>Whether nothing shorter could be sold that serves every position at which the motif may be.</summary>
    public required bool ProvenMinimal { get; init; }

    /// <summary>The argument that proves it.</summary>
    public required ProofKind Proof { get; init; }

    /// <summary>The figures of the proof; empty when there is none.</summary>
    public required string ProofFigures { get; init; }

    /// <summary>Whether it runs on from roll to roll, so that a piece may lie across the ends of two: where motifs are matched, or a
    /// piece is longer than a roll.</summary>
    public bool CrossesRolls { get; init; }

    /// <summary>Every copy of every piece, once.</summary>
    public required ImmutableArray<LaidPiece> Placements { get; init; }

    /// <summary>Search steps spent.</summary>
    public required long Steps { get; init; }

    /// <summary>Area that the pieces cover.</summary>
    public Area Covered => Placements.Aggregate(default(Area), (sum, laid) => sum + laid.Piece.Area);

    /// <summary>Share of usable width × length that the pieces cover, 0 to 1.</summary>
    public double Used => Covered.ShareOf(Area.Of(Fabric.UsableWidth, Length));
}
