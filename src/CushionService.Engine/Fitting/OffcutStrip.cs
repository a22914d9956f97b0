using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Nesting;

namespace CushionService.Engine.Fitting;

/// <summary>Lays pieces onto one offcut, as on a strip that ends.</summary>
internal static class OffcutStrip
{
    // Offcuts of one size are one trial, and what the largest do not hold smaller ones rarely do: a bound on time.
    private const int MostAlone = 2;

    /// <summary>Whether offcuts may hold pieces together: not where the pieces have more area, or one fits onto none of them.</summary>
    /// <param name="rooms">The offcuts.</param>
    /// <param name="pieces">The pieces.</param>
    public static bool MayHold(ImmutableArray<OffcutRoom> rooms, IReadOnlyCollection<CutPiece> pieces)
    {
        Area needed = pieces.Aggregate(default(Area), (sum, piece) => sum + piece.Quantity * piece.Area);
        Area given = rooms.Aggregate(default(Area), (sum, room) => sum + room.Area);
        return needed.SquareNanometres <= given.SquareNanometres && pieces.All(piece => rooms.Any(room => Fits(piece, room)));
    }

    /// <summary>Lays pieces onto one offcut.</summary>
    /// <param name="room">The offcut, a rectangle.</param>
    /// <param name="pieces">The pieces.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="sharedBy">How many searches share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <returns>Nothing is laid unless all fit. The kernel stops at the first layout that the strip holds; its bound says when there is
    /// none.</returns>
    public static (FitVerdict Verdict, ImmutableArray<LaidPiece> Laid) Lay(
        OffcutRoom room,
        IReadOnlyList<CutPiece> pieces,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        if (pieces.Any(piece => !Fits(piece, room)))
        {
            return (pieces.Any(piece => !Fits(piece, room.Whole)) ? FitVerdict.Impossible : FitVerdict.NotFound, []);
        }

        FabricLayout layout = FabricNesting.LayOut(room.Fabric, pieces, SaleGoal.Within(room.Length), effort, sharedBy, cancellation);
        return layout.Length <= room.Length ? (FitVerdict.Fits, layout.Placements)
            : layout.FreeBound > room.Length + room.Start ? (FitVerdict.Impossible, [])
            : (FitVerdict.NotFound, []);
    }

    /// <summary>Lays pieces onto one of several offcuts as if it were the only one, so that those beside it spoil nothing.</summary>
    /// <param name="rooms">Several offcuts.</param>
    /// <param name="pieces">At least one piece.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="sharedBy">How many searches share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <returns>A layout of each offcut, all but one of them empty; null where none is found to hold them, or one is a hide.</returns>
    public static ImmutableArray<OffcutLayout>? OnOne(
        ImmutableArray<OffcutRoom> rooms,
        ImmutableArray<CutPiece> pieces,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        if (rooms.Length == 1 || rooms.Any(room => !room.Outline.IsEmpty))
        {
            return null;
        }

        foreach (
            OffcutRoom room in rooms
                .Where(room => MayHold([room], pieces))
                .DistinctBy(room => (room.Width, room.Length))
                .OrderByDescending(room => room.Area.SquareNanometres)
                .Take(MostAlone)
        )
        {
            if (Lay(room, pieces, effort, sharedBy, cancellation) is { Verdict: FitVerdict.Fits } strip)
            {
                return [.. rooms.Select(one => new OffcutLayout(one, ReferenceEquals(one, room) ? strip.Laid : []))];
            }
        }

        return null;
    }

    // By its bounding box, as its grain asks or a quarter turn from it where that is allowed.
    private static bool Fits(CutPiece piece, OffcutRoom room) =>
        (piece.Across <= room.Width && piece.Along <= room.Length)
        || (piece.Rotations == Rotations.QuarterTurns && piece.Along <= room.Width && piece.Across <= room.Length);
}
