using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Nesting;

namespace CushionService.Engine.Fitting;

/// <summary>Lays pieces onto hides and panels of given outlines, one after another: each copy as low as it can lie, and then as far left,
/// on the first hide that has room.</summary>
/// <remarks>The bottom-left rule of Baker, Coffman and Rivest (1980), on outlines. Copies are tried in several orders, and the one that
/// lays most is kept. A piece that is no rectangle is laid as the box round it, so that the layout may leave what a master would
/// use.</remarks>
internal sealed class HideSearch(
    ImmutableArray<OffcutRoom> rooms,
    ImmutableArray<CutPiece> pieces,
    int sharedBy,
    CancellationToken cancellation
)
{
    // Sides and pieces that are looked at, over all orders: what a second holds, and never less than a few dozen pieces take.
    private const long StepsAtQuick = 4_000_000;
    private const long UsualSteps = 12_000_000;
    private const long StepsAtThorough = 80_000_000;
    private const long LeastSteps = 200_000;

    // Levels that are tried beside those of corners and of what lies there.
    private const int UsualRows = 60;
    private const int RowsAtThorough = 240;

    private static readonly Func<CutPiece, double>[] Orders =
    [
        piece => (double)Area.Of(piece.Width, piece.Length).SquareNanometres,
        piece => piece.Along.Nanometres,
        piece => piece.Across.Nanometres,
        piece => Length.Max(piece.Width, piece.Length).Nanometres,
    ];

    private long _steps;

    private readonly HideOutline[] _outlines = [.. rooms.Select(room => new HideOutline(room.Corners))];

    /// <summary>The best layout of each room that was found.</summary>
    /// <param name="effort">How finely to search.</param>
    public ImmutableArray<LaidPiece>[] Run(Effort effort)
    {
        int rows = effort >= Effort.Thorough ? RowsAtThorough : UsualRows;
        long all = effort switch
        {
            Effort.Quick => StepsAtQuick,
            Effort.Standard => UsualSteps,
            _ => StepsAtThorough,
        };
        _steps = Math.Max(LeastSteps, all / sharedBy);
        int[] small = [.. Enumerable.Range(0, rooms.Length).Where(i => !rooms[i].IsEmpty).OrderBy(i => rooms[i].Area.SquareNanometres)];
        List<LaidPiece>[] best = [];
        double most = -1;
        int copies = pieces.Sum(piece => piece.Quantity);
        foreach (int[] at in (int[][])[small, [.. small.Reverse()]])
        {
            foreach (Func<CutPiece, double> order in _steps > 0 || best.Length == 0 ? Orders : [])
            {
                List<LaidPiece>[] laid = Lay(pieces.OrderByDescending(order), at, rows);
                double covered = laid.Sum(room => room.Sum(one => (double)one.Piece.Area.SquareNanometres));
                (best, most) = covered > most ? (laid, covered) : (best, most);
                if (laid.Sum(room => room.Count) == copies)
                {
                    return CopyNumbers.Over([.. laid.Select(room => room.ToImmutableArray())]);
                }
            }
        }

        return CopyNumbers.Over([.. best.Select(room => room.ToImmutableArray())]);
    }

    private List<LaidPiece>[] Lay(IEnumerable<CutPiece> ordered, int[] at, int rows)
    {
        List<LaidPiece>[] laid = [.. rooms.Select(_ => new List<LaidPiece>())];
        foreach (CutPiece piece in ordered)
        {
            // A hide that has no room for a copy has none for the next, nor room below it.
            (int hide, long from) = (0, 0);
            for (var copy = 0; copy < piece.Quantity && hide < at.Length && _steps > 0; )
            {
                cancellation.ThrowIfCancellationRequested();
                if (Place(piece, at[hide], laid[at[hide]], rows, from) is { } place)
                {
                    laid[at[hide]].Add(place);
                    from = place.Y.Nanometres;
                    copy++;
                }
                else
                {
                    (hide, from) = (hide + 1, 0);
                }
            }
        }

        return laid;
    }

    // The lowest place of a copy on one hide, from a level on, and of these the leftmost, in each turn that keeps its grain; null for none.
    private LaidPiece? Place(CutPiece piece, int room, List<LaidPiece> laid, int rows, long from)
    {
        LaidPiece? best = null;
        foreach (int quarter in piece.Rotations == Rotations.QuarterTurns ? (int[])[0, 90] : [0])
        {
            var turned = new LaidPiece(piece, 1, Length.Zero, Length.Zero, (quarter + (piece.IsRailroaded ? 90 : 0)) % 360);
            (long width, long height) = (turned.Width.Nanometres, turned.Length.Nanometres);
            foreach (long y in Levels(rooms[room], laid, height, rows, from))
            {
                if (best is not null && y >= best.Y.Nanometres)
                {
                    break;
                }

                _steps -= rooms[room].Corners.Length + laid.Count;
                IEnumerable<(long, long)> taken = laid.Where(one => one.Y.Nanometres < y + height && y < (one.Y + one.Length).Nanometres)
                    .Select(one => (one.X.Nanometres, (one.X + one.Width).Nanometres));
                foreach ((long left, _) in _outlines[room].Free(y, height, width, taken))
                {
                    best = turned with { X = Length.FromNanometres(left), Y = Length.FromNanometres(y) };
                    break;
                }
            }
        }

        return best;
    }

    // Where a lower edge may have to be: on a corner, with the upper edge on one, on or under what lies there, and on levels between.
    private static long[] Levels(OffcutRoom room, List<LaidPiece> laid, long height, int rows, long from)
    {
        long top = room.Length.Nanometres - height;
        IEnumerable<long> corners = room.Corners.Select(corner => corner.Y.Nanometres),
            edges = laid.SelectMany(one => (long[])[one.Y.Nanometres, (one.Y + one.Length).Nanometres]);
        long[] marks = [.. corners, .. edges];
        return
        [
            .. marks
                .Concat(marks.Select(mark => mark - height))
                .Concat(Enumerable.Range(0, rows).Select(row => top / rows * row))
                .Where(y => y >= from && y <= top)
                .Distinct()
                .Order(),
        ];
    }
}
