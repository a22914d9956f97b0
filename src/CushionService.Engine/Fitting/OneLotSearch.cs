using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Fitting;

/// <summary>Lays every cushion onto offcuts of one dye lot, as long as it finds room: lot after lot takes the largest cushions that fit
/// beside those that it has.</summary>
/// <remarks>Lots differ in colour, which is seen on one cushion and hardly on two (common practice, no source). What is not seen, and
/// pieces of the maker's own, may come from any lot.</remarks>
internal sealed class OneLotSearch
{
    // Each cushion that is tried takes a layout of its lot; above these it would keep a page waiting.
    private const int MostUnits = 60;
    private const int MostTrials = 60;
    private const int MostTrialsOfLot = 8;

    private readonly ImmutableArray<OffcutRoom> _rooms;
    private readonly ImmutableArray<CutPiece> _pieces;
    private readonly int _sharedBy;
    private readonly CancellationToken _cancellation;
    private int _trials;

    /// <summary>Prepares a search.</summary>
    /// <param name="rooms">The offcuts, of at least two lots.</param>
    /// <param name="pieces">At least one piece.</param>
    /// <param name="sharedBy">How many searches share the effort's steps; each trial of this one takes a share of its share.</param>
    /// <param name="cancellation">Cancels the search.</param>
    public OneLotSearch(ImmutableArray<OffcutRoom> rooms, ImmutableArray<CutPiece> pieces, int sharedBy, CancellationToken cancellation)
    {
        (_rooms, _pieces, _cancellation) = (rooms, pieces, cancellation);
        _sharedBy = sharedBy * MostTrials;
    }

    /// <summary>Cushions that stand beside each other, and so are kept in one lot.</summary>
    public ImmutableArray<RowSpecification> Rows { get; init; } = [];

    /// <summary>The layout of each room; null where no way was found.</summary>
    /// <param name="effort">How hard each trial searches.</param>
    /// <remarks>Tries the smallest lots first, which keeps the large ones whole; then the largest first, which finds room where small lots
    /// are of no use.</remarks>
    public ImmutableArray<OffcutLayout>? Run(Effort effort)
    {
        List<Unit> units = [.. Units().OrderByDescending(unit => unit.Area.SquareNanometres)];
        IGrouping<string, int>[] lots = [.. Enumerable.Range(0, _rooms.Length).GroupBy(i => _rooms[i].Lot)];
        return units.Count > MostUnits ? null : Fill(lots, units, effort, smallestFirst: true) ?? Fill(lots, units, effort, false);
    }

    /// <summary>Each lot with as many whole cushions as are found to fit on it, the largest first.</summary>
    /// <param name="effort">How hard each trial searches.</param>
    /// <returns>The layout of each room, and the pieces that found no place, with how many copies of each; those of a cushion are all there
    /// or all laid.</returns>
    /// <remarks>Cushions of a line are tried in groups, twice as many after each success and half as many after each failure.</remarks>
    public (ImmutableArray<OffcutLayout> Layouts, ImmutableArray<CutPiece> Left) Most(Effort effort)
    {
        var laid = new ImmutableArray<LaidPiece>[_rooms.Length];
        Array.Fill(laid, []);
        List<Unit> left = [.. Units().OrderByDescending(unit => unit.Area.SquareNanometres)];
        foreach (var lot in Enumerable.Range(0, _rooms.Length).GroupBy(i => _rooms[i].Lot))
        {
            (int[] at, List<Unit> taken) = ([.. lot], []);
            foreach (Unit kind in left.Distinct().ToArray())
            {
                int group = 1;
                while (left.Contains(kind) && _trials < MostTrials)
                {
                    List<Unit> next = [.. left.Where(unit => ReferenceEquals(unit, kind)).Take(group)];
                    ImmutableArray<OffcutLayout>? layouts = Lay(at, [.. taken, .. next], effort);
                    if (layouts is { } found)
                    {
                        for (var i = 0; i < at.Length; i++)
                        {
                            laid[at[i]] = found[i].Placements;
                        }

                        taken.AddRange(next);
                        next.ForEach(unit => left.Remove(unit));
                    }
                    else if (next.Count == 1)
                    {
                        break;
                    }

                    group = layouts is null ? next.Count / 2 : 2 * group;
                }
            }
        }

        return (
            [.. CopyNumbers.Over(laid).Select((placements, i) => new OffcutLayout(_rooms[i], placements))],
            [
                .. left.SelectMany(unit => unit.Pieces)
                    .GroupBy(piece => piece.Id)
                    .Select(same => same.First() with { Quantity = same.Sum(piece => piece.Quantity) }),
            ]
        );
    }

    /// <summary>The cushions of which pieces lie in several lots, with those lots.</summary>
    /// <param name="layouts">A layout of each offcut.</param>
    /// <returns>In the order in which they are met. Inner covers do not count, for their colour is not seen.</returns>
    public static ImmutableArray<SplitCushion> Split(IEnumerable<OffcutLayout> layouts) =>
        [
            .. layouts
                .SelectMany(layout => layout.Placements.Select(laid => (layout.Room.Lot, laid.Piece)))
                .Where(laid => IsSeen(laid.Piece))
                .GroupBy(laid => laid.Piece.Cushion!.Id)
                .Where(cushion => !IsShared(cushion.GroupBy(laid => laid.Lot)))
                .Select(cushion => new SplitCushion(cushion.First().Piece.Cushion!, [.. cushion.Select(laid => laid.Lot).Distinct()])),
        ];

    // Whether each lot has whole cushions of a kind that is made several times.
    private static bool IsShared(IEnumerable<IGrouping<string, (string Lot, CutPiece Piece)>> lots)
    {
        IGrouping<string, (string Lot, CutPiece Piece)>[] all = [.. lots];
        int kinds = all.SelectMany(lot => lot.Select(laid => laid.Piece.Id)).Distinct().Count();
        return all.Length == 1
            || all.All(lot =>
            {
                var counts = lot.GroupBy(laid => laid.Piece.Id).Select(kind => (Kind: kind.First().Piece, Laid: kind.Count())).ToArray();
                (CutPiece Kind, int Laid) first = counts[0];
                return counts.Length == kinds
                    && counts.All(kind => (long)kind.Laid * first.Kind.Quantity == (long)first.Laid * kind.Kind.Quantity);
            });
    }

    /// <summary>Whether its colour is seen beside that of others: a piece of the maker's own belongs to no cushion, and an inner cover is
    /// hidden.</summary>
    public static bool IsSeen(CutPiece piece) => piece.Cushion is not null && piece.Panel?.Role != FabricRole.InnerCover;

    // A unit is one cushion's pieces, or those of a whole row; of strips that serve several cushions together, and of the rest, each piece
    // by itself.
    private IEnumerable<Unit> Units()
    {
        foreach (var row in _pieces.Where(piece => IsWhole(piece) && RowOf(piece) >= 0).GroupBy(RowOf))
        {
            yield return new Unit([.. row]);
        }

        foreach (var cushion in _pieces.Where(piece => IsWhole(piece) && RowOf(piece) < 0).GroupBy(piece => piece.Cushion!.Id))
        {
            int copies = cushion.First().Cushion!.Quantity;
            Unit one = new([.. cushion.Select(piece => piece with { Quantity = piece.Quantity / copies })]);
            foreach (Unit copy in Enumerable.Repeat(one, copies))
            {
                yield return copy;
            }
        }

        foreach (CutPiece piece in _pieces.Where(piece => !IsWhole(piece)))
        {
            foreach (Unit copy in Enumerable.Repeat(new Unit([piece with { Quantity = 1 }]), piece.Quantity))
            {
                yield return copy;
            }
        }

        int RowOf(CutPiece piece)
        {
            for (var i = 0; i < Rows.Length; i++)
            {
                if (Rows[i].Cushions.Contains(piece.Cushion!.Id))
                {
                    return i;
                }
            }

            return -1;
        }

        static bool IsWhole(CutPiece piece) => IsSeen(piece) && piece.Quantity % piece.Cushion!.Quantity == 0;
    }

    // Null where some unit finds no lot, or the trials are used up; half a result would split a cushion.
    private ImmutableArray<OffcutLayout>? Fill(IGrouping<string, int>[] lots, List<Unit> units, Effort effort, bool smallestFirst)
    {
        List<Unit> left = [.. units];
        var laid = new ImmutableArray<LaidPiece>[_rooms.Length];
        Array.Fill(laid, []);
        foreach (var lot in lots.OrderBy(lot => (smallestFirst ? 1 : -1) * lot.Sum(i => (double)_rooms[i].Area.SquareNanometres)))
        {
            int[] at = [.. lot];
            List<Unit> taken = [];
            // Units of one kind follow each other: where one has no room, the others have none.
            Unit? without = null;
            foreach (Unit unit in left.ToArray())
            {
                if (_trials >= MostTrials)
                {
                    return null;
                }

                if (!ReferenceEquals(unit, without) && Lay(at, [.. taken, unit], effort) is { } layouts)
                {
                    taken.Add(unit);
                    left.Remove(unit);
                    for (var i = 0; i < at.Length; i++)
                    {
                        laid[at[i]] = layouts[i].Placements;
                    }
                }
                else
                {
                    without = unit;
                }
            }
        }

        return left.Count > 0 ? null : [.. CopyNumbers.Over(laid).Select((placements, i) => new OffcutLayout(_rooms[i], placements))];
    }

    // Lays all units of a lot anew: those that it has may have to move to make room for one more.
    private ImmutableArray<OffcutLayout>? Lay(int[] lot, IEnumerable<Unit> units, Effort effort)
    {
        ImmutableArray<OffcutRoom> rooms = [.. lot.Select(i => _rooms[i])];
        ImmutableArray<CutPiece> pieces =
        [
            .. units
                .SelectMany(unit => unit.Pieces)
                .GroupBy(piece => piece.Id)
                .Select(same => same.First() with { Quantity = same.Sum(piece => piece.Quantity) }),
        ];
        _trials++;
        var search = new OffcutSearch(rooms, pieces, _sharedBy, _cancellation) { MostTrials = rooms.Length > 1 ? MostTrialsOfLot : 0 };
        return search.Run(effort) == FitVerdict.Fits ? search.Layouts() : null;
    }

    // What must come from one lot.
    private sealed class Unit(ImmutableArray<CutPiece> pieces)
    {
        public ImmutableArray<CutPiece> Pieces => pieces;

        public Area Area { get; } = pieces.Aggregate(default(Area), (sum, piece) => sum + piece.Quantity * piece.Area);
    }
}
