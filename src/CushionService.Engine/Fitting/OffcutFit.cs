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
    /// <summary>The cushions whose pieces come from several dye lots; empty unless the pieces fit.</summary>
    public ImmutableArray<SplitCushion> Split { get; } =
        Verdict == FitVerdict.Fits && !(Fabric.Lot is null && Fabric.OnHand.All(offcut => offcut is { Lot: null, Outline.IsEmpty: false }))
            ? OneLotSearch.Split(Layouts)
            : [];

    /// <summary>The same, where the pieces are too many to be tried one by one and none is laid, with as many whole cushions as are found
    /// to fit.</summary>
    /// <param name="effort">How hard to search.</param>
    /// <param name="sharedBy">How many searches share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public OffcutFit Filled(Effort effort, int sharedBy, CancellationToken cancellation)
    {
        if (Verdict == FitVerdict.Fits || Layouts.Any(layout => !layout.Placements.IsEmpty || !layout.Room.Outline.IsEmpty))
        {
            return this;
        }

        ImmutableArray<CutPiece> pieces = [.. Unplaced.Select(rest => rest.Piece)];
        (ImmutableArray<OffcutLayout> layouts, ImmutableArray<CutPiece> left) = new OneLotSearch(
            [.. Layouts.Select(layout => layout.Room)],
            pieces,
            sharedBy,
            cancellation
        ).Most(effort);
        return this with { Layouts = layouts, Unplaced = [.. left.Select(piece => (piece, piece.Quantity))] };
    }

    /// <summary>Lays the pieces, each cushion's onto one dye lot where a way is found.</summary>
    /// <param name="fabric">A fabric with offcuts.</param>
    /// <param name="pieces">At least one piece of that fabric.</param>
    /// <param name="effort">How hard to search; at <see cref="Effort.Thorough"/>, in more than one way.</param>
    /// <param name="sharedBy">How many fabrics, or trials of sizes, share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static OffcutFit Of(
        FabricSpecification fabric,
        ImmutableArray<CutPiece> pieces,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        ImmutableArray<OffcutRoom> rooms = OffcutRoom.Of(fabric, pieces);
        // Hides are of one colour unless their lots are named.
        bool severalLots =
            rooms.Select(room => room.Lot).Distinct().Count() > 1
            && (rooms.All(room => room.Outline.IsEmpty) || fabric.OnHand.Any(offcut => (offcut.Lot ?? fabric.Lot) is not null));
        // With several lots there are two searches, so each gets half of the steps.
        int share = sharedBy * (severalLots ? 2 : 1);
        if (severalLots && new OneLotSearch(rooms, pieces, share, cancellation).Run(effort) is { } apart)
        {
            return new OffcutFit(fabric, FitVerdict.Fits, apart, []);
        }

        var search = new OffcutSearch(rooms, pieces, share, cancellation);
        FitVerdict verdict = search.Run(effort);
        if (verdict == FitVerdict.NotFound && OffcutStrip.OnOne(rooms, pieces, effort, sharedBy, cancellation) is { } alone)
        {
            return new OffcutFit(fabric, FitVerdict.Fits, alone, []);
        }

        return new OffcutFit(fabric, verdict, search.Layouts(), search.Unplaced());
    }
}
