using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Fitting;

/// <summary>Lays pieces onto offcuts. Hides have a search of their own. One offcut is a strip that ends;
/// several are stock sheets, and where the sheets' kernel finds no
/// place for everything, or the fabric has a repeat, they are strips again, filled one after another.</summary>
internal sealed class OffcutSearch(
    ImmutableArray<OffcutRoom> rooms,
    ImmutableArray<CutPiece> pieces,
    int sharedBy,
    CancellationToken cancellation
)
{
    // Filling by turns lays a strip for each group of copies that it tries; above these it would keep a page waiting.
    private const int MostByTurns = 60;

    // Bounds on the layouts that filling by turns tries over all offcuts, so that the time does not grow with the order.
    private const int UsualTrials = 100;
    private const int UsualTrialsAtThorough = 400;

    // What a trial takes of the steps of an effort lower than the order's. At the lowest effort all of them share its steps.
    private const int TrialsSharing = 20;

    private int _trials;

    private readonly ImmutableArray<LaidPiece>[] _laid = [.. rooms.Select(_ => ImmutableArray<LaidPiece>.Empty)];

    /// <summary>How many groups of copies are tried at most; null for as many as the effort allows.</summary>
    public int? MostTrials { get; init; }

    /// <summary>Searches, and keeps the best layouts found.</summary>
    /// <param name="effort">How hard to search.</param>
    /// <returns><see cref="FitVerdict.Impossible"/> only where a bound shows it. The layouts then hold what can be laid, so that the maker
    /// sees what is missing.</returns>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public FitVerdict Run(Effort effort)
    {
        if (rooms.Any(room => !room.Outline.IsEmpty))
        {
            // What cannot all fit is laid in one pass: the maker sees what is missing.
            bool mayFit = OffcutStrip.MayHold(rooms, pieces);
            new HideSearch(rooms, pieces, sharedBy, cancellation).Run(mayFit ? effort : Effort.Quick).CopyTo(_laid, 0);
            return Unplaced().IsEmpty ? FitVerdict.Fits
                : mayFit ? FitVerdict.NotFound
                : FitVerdict.Impossible;
        }

        if (!OffcutStrip.MayHold(rooms, pieces))
        {
            FillMost();
            // What is kept to find the motif may be more than is needed.
            return OffcutStrip.MayHold([.. rooms.Select(room => room.Whole)], pieces) ? FitVerdict.NotFound : FitVerdict.Impossible;
        }

        if (rooms is [OffcutRoom only])
        {
            (FitVerdict verdict, _laid[0]) = OffcutStrip.Lay(only, pieces, effort, sharedBy, cancellation);
            if (verdict != FitVerdict.Fits)
            {
                FillByTurns(Effort.Quick, smallestFirst: false);
            }

            return verdict;
        }

        bool plain = !rooms.Any(room => pieces.Any(piece => FabricNesting.IsMatched(room.Fabric, piece)));
        bool found =
            (plain && OnSheets(effort))
            || (
                effort >= Effort.Thorough || !plain
                    ? FillByTurns(effort, smallestFirst: true) || FillByTurns(effort, smallestFirst: false)
                    : FillMost()
            );
        return found ? FitVerdict.Fits : FitVerdict.NotFound;
    }

    /// <summary>The layout of each offcut, in their order; empty ones before <see cref="Run"/>.</summary>
    public ImmutableArray<OffcutLayout> Layouts() => [.. rooms.Select((room, i) => new OffcutLayout(room, _laid[i]))];

    /// <summary>Pieces of which not every copy is laid, with how many are not, at least 1.</summary>
    public ImmutableArray<(CutPiece Piece, int Copies)> Unplaced() =>
        [
            .. pieces
                .Select(piece => (piece, piece.Quantity - _laid.Sum(laid => laid.Count(one => one.Piece.Id == piece.Id))))
                .Where(rest => rest.Item2 > 0),
        ];

    // Offcuts narrower or shorter than one step of the grid are left out; sizes go down to the grid, so that nothing overhangs. Each
    // offcut costs its area, so that small ones are used first.
    private bool OnSheets(Effort effort)
    {
        var problem = new SpanProblem(rooms.MaxBy(room => room.Width)!.Fabric, pieces, null);
        Grid grid = problem.Grid;
        int[] used = [.. Enumerable.Range(0, rooms.Length).Where(i => grid.Down(rooms[i].Width) > 0 && grid.Down(rooms[i].Length) > 0)];
        SheetLayout layout = Nester.Nest(
            new SheetProblem
            {
                Pieces = problem.Pieces,
                Sheets =
                [
                    .. used.Select(i => new StockSheet(
                        grid.Down(rooms[i].Width),
                        grid.Down(rooms[i].Length),
                        1,
                        grid.Down(rooms[i].Width) * grid.Down(rooms[i].Length)
                    )),
                ],
            },
            effort,
            // At the lowest effort the filling by turns that may follow has the other half of the steps.
            effort == Effort.Quick
                ? 2 * sharedBy
                : sharedBy,
            cancellation
        );
        for (var sheet = 0; sheet < layout.Sheets.Length; sheet++)
        {
            _laid[used[layout.Sheets[sheet]]] =
            [
                .. layout.Placements.Where(placed => placed.Sheet == sheet).Select(placed => problem.Laid(placed)),
            ];
        }

        return layout.Unplaced.IsEmpty;
    }

    // Where not all fits: with small offcuts first they take what the large ones need not, and with large ones first what only those hold
    // comes first. What leaves the least area to buy is kept.
    private bool FillMost()
    {
        int all = MostTrials ?? UsualTrials;
        return FillByTurns(Effort.Quick, smallestFirst: true, all / 2) || FillByTurns(Effort.Quick, smallestFirst: false, all);
    }

    // Offcut after offcut takes, of the copies that are left, the largest first, as many as the kernel finds a place for beside the others.
    // Copies are tried in groups, twice as many after each success and half as many after each failure; a piece of which not one copy fits
    // is passed over.
    private bool FillByTurns(Effort effort, bool smallestFirst, int? most = null)
    {
        var left = pieces
            .SelectMany(piece => Enumerable.Repeat(piece, piece.Quantity))
            .OrderByDescending(piece => piece.Area.SquareNanometres)
            .ToList();
        if (left.Count > MostByTurns)
        {
            return false;
        }

        var laid = new ImmutableArray<LaidPiece>[rooms.Length];
        foreach (int i in Enumerable.Range(0, rooms.Length).OrderBy(i => (smallestFirst ? 1 : -1) * rooms[i].Area.SquareNanometres))
        {
            laid[i] = Fill(rooms[i], left, effort, most);
        }

        if (left.Count > 0 && AreaOf(laid) <= AreaOf(_laid))
        {
            return false;
        }

        CopyNumbers.Over(laid).CopyTo(_laid, 0);
        return left.Count == 0;
    }

    private static Int128 AreaOf(ImmutableArray<LaidPiece>[] laid) =>
        laid.SelectMany(room => room).Aggregate(default(Area), (sum, one) => sum + one.Piece.Area).SquareNanometres;

    // Takes out of what is left the copies that it lays. A group with more area than the offcut is not tried.
    private ImmutableArray<LaidPiece> Fill(OffcutRoom room, List<CutPiece> left, Effort effort, int? mostTrials)
    {
        (ImmutableArray<LaidPiece> laid, List<CutPiece> chosen) = ([], []);
        (Effort each, int usual) = effort >= Effort.Thorough ? (Effort.Standard, UsualTrialsAtThorough) : (Effort.Quick, UsualTrials);
        int most = mostTrials ?? MostTrials ?? usual,
            sharing = each == effort ? usual : TrialsSharing;
        var (group, waiting) = (1, new List<CutPiece>(left));
        while (waiting.Count > 0 && _trials < most)
        {
            List<CutPiece> taken = waiting[..Math.Min(group, waiting.Count)];
            CutPiece[] trial =
            [
                .. chosen.Concat(taken).GroupBy(piece => piece.Id).Select(same => same.First() with { Quantity = same.Count() }),
            ];
            bool small =
                trial.Aggregate(default(Area), (sum, piece) => sum + piece.Quantity * piece.Area).SquareNanometres
                <= room.Area.SquareNanometres;
            if (
                small
                && ++_trials > 0
                && OffcutStrip.Lay(room, trial, each, sharedBy * sharing, cancellation) is { Verdict: FitVerdict.Fits } strip
            )
            {
                laid = strip.Laid;
                chosen.AddRange(taken);
                taken.ForEach(copy => left.Remove(copy));
                waiting.RemoveRange(0, taken.Count);
                group *= 2;
            }
            else if (taken.Count > 1)
            {
                group = taken.Count / 2;
            }
            else
            {
                waiting.RemoveAll(copy => copy.Id == taken[0].Id);
            }
        }

        return laid;
    }
}
