using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Fitting;

/// <summary>Whether the pieces of one fabric fit onto what one has of it, all offcuts together.</summary>
/// <param name="Fabric">The fabric.</param>
/// <param name="Verdict">Whether they do.</param>
/// <param name="Layouts">A layout for each offcut, in their order; where the pieces do not all fit, of those that found a place.</param>
/// <param name="Unplaced">Pieces that found no place, with how many of each; empty when they fit.</param>
public sealed record OffcutFit(
    FabricSpecification Fabric,
    FitVerdict Verdict,
    ImmutableArray<OffcutLayout> Layouts,
    ImmutableArray<(CutPiece Piece, int Copies)> Unplaced
)
{
    /// <summary>Lays the pieces.</summary>
    /// <param name="fabric">A fabric with offcuts.</param>
    /// <param name="pieces">At least one piece of that fabric.</param>
    /// <param name="effort">How hard to search; at <see cref="Effort.Thorough"/>, in more than one way.</param>
    /// <param name="sharedBy">How many fabrics, or trials of sizes, share the effort's steps.</param>
    /// <param name="cancellation">Gives up the search.</param>
    /// <exception cref="OperationCanceledException">The caller gave up.</exception>
    public static OffcutFit Of(
        FabricSpecification fabric,
        ImmutableArray<CutPiece> pieces,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        var search = new OffcutSearch(OffcutRoom.Of(fabric), pieces, sharedBy, cancellation);
        FitVerdict verdict = search.Run(effort);
        return new OffcutFit(fabric, verdict, search.Layouts(), search.Unplaced());
    }
}
