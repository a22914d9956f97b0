using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Layouts;

/// <summary>Lays the pieces of one fabric: turns the fabric's rules into a nesting problem, and the answer back into lengths.</summary>
public static class FabricNesting
{
    /// <summary>Lays every piece.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="pieces">At least one piece of that fabric, each of which fits it (see <see cref="Fits"/>).</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="sharedBy">How many fabrics share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static FabricLayout LayOut(
        FabricSpecification fabric,
        IReadOnlyList<CutPiece> pieces,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    ) => LayOut(fabric, pieces, goal: null, effort, sharedBy, cancellation);

    /// <summary>Lays every piece, as short as a goal asks; null for the lengths in which the fabric is sold.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="pieces">At least one piece of that fabric, each of which fits it.</param>
    /// <param name="goal">The lengths that are as good as each other.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="sharedBy">How many fabrics share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    internal static FabricLayout LayOut(
        FabricSpecification fabric,
        IReadOnlyList<CutPiece> pieces,
        SaleGoal? goal,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        CutPiece[] sorted = new PieceOrder(fabric).Of(pieces);
        FabricLayout layout = Laid(fabric, sorted, goal, effort, sharedBy, cancellation);
        layout = layout with { Placements = PieceOrder.AsGiven(layout.Placements, pieces) };
        // What is on hand, or asked for, is one length.
        return goal is null ? BiasBound.Of(RollLayout.Of(layout, sorted, effort, sharedBy, cancellation)) : layout;
    }

    private static FabricLayout Laid(
        FabricSpecification fabric,
        IReadOnlyList<CutPiece> pieces,
        SaleGoal? goal,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        if (fabric.LaidRepeat is { } repeat && pieces.Any(piece => IsMatched(fabric, piece)))
        {
            Length start = repeat.IsUnknownAlong ? fabric.Repeat!.Length!.Value : Length.Zero;
            return new MatchedNesting(fabric, pieces, goal ?? SaleGoal.Sold(fabric, start), effort, sharedBy, cancellation).LayOut();
        }

        var problem = new SpanProblem(fabric, pieces, null);
        StripLayout layout = Nester.Nest(problem.At(goal ?? SaleGoal.Sold(fabric, Length.Zero)), effort, sharedBy, cancellation);
        return new FabricLayout
        {
            Fabric = fabric,
            Length = problem.Grid.Back(layout.Length),
            LowerBound = problem.Grid.Back(layout.LowerBound),
            ProvenMinimal = layout.ProvenMinimal,
            Proof = layout.Proof,
            ProofFigures = layout.ProofFigures,
            Placements = [.. layout.Placements.Select(placed => problem.Laid(placed))],
            Steps = layout.Steps,
        };
    }

    /// <summary>Whether a piece fits the fabric's usable width in one of its turns.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="piece">A piece of it.</param>
    public static bool Fits(FabricSpecification fabric, CutPiece piece) =>
        piece.Across <= fabric.UsableWidth || (piece.Rotations == Rotations.QuarterTurns && piece.Along <= fabric.UsableWidth);

    /// <summary>Whether a piece is matched to the fabric's repeat, at every position of the motif or at some.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="piece">A piece of it.</param>
    public static bool IsMatched(FabricSpecification fabric, CutPiece piece) => MatchedAt.Of(fabric, piece) is not null;
}
