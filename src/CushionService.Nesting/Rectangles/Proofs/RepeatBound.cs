using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>A length that no layout can beat where pieces must lie on a repeat: aligned pieces take whole motifs, not just their
/// area.</summary>
/// <remarks>
/// <para>Lay a <see cref="MotifGrid"/> of test points over the fabric. In any layout each piece covers a block of c columns by d rows of
/// points, the same wherever it lies on its phase, and no two pieces cover one point. So the blocks lie apart on a strip of the K columns
/// that any piece can reach, and whatever bounds such a strip bounds the rows R that they take: first R ≥ ⌈Σ n c d / K⌉, then dual feasible
/// functions and relaxations.</para>
/// <para>Some piece then covers row R − 1 or a higher one. If it is aligned at phase b with length l, it ends at a place b + l + i × repeat
/// beyond that row; of these the first is at (R − d) × repeat + l above the lowest place of its phase, when the rows are those of its
/// phase. Which piece it is is not known: the layout is at least as long as the least of these ends over all pieces.</para>
/// <para>The argument holds for every choice of points. The best lie on the phases of the pieces: moved up from there, no piece covers more
/// until the next phase. Pieces that are not aligned may be left out, which is better when one of them could be the last.</para>
/// <para>On a drop repeat, heights repeat by the greatest common divisor of repeat and drop, whatever the column: the rows of points lie
/// that far apart, and each piece takes its own width across. On any repeat the same may be done with the repeat's own length, which is
/// better where motifs are narrow.</para>
/// </remarks>
internal sealed class RepeatBound
{
    // Different phases that are tried each way; more are more of the same.
    private const int MostPhases = 12;

    // Numbers of rows that functions and relaxations are tried on.
    private const int MostTries = 24;
    private readonly StripProblem _problem;
    private readonly StepBudget _budget;

    /// <summary>Works the bound out.</summary>
    /// <param name="problem">A strip with a repeat.</param>
    /// <param name="budget">Pays a step for each piece and choice of points, and for the relaxations.</param>
    public RepeatBound(StripProblem problem, StepBudget budget)
    {
        (_problem, _budget) = (problem, budget);
        var lattice = problem.Repeat!;
        NestingPiece[] aligned = [.. problem.Pieces.Where(piece => piece.Alignment is not null)];
        long heights = Divisors.Greatest(lattice.Length, lattice.Drop);
        Length = aligned.Select(piece => MotifGrid.Modulo(piece.Alignment!.Value.PhaseY, heights) + piece.Length).DefaultIfEmpty().Max();
        (Kind, Figures) = (ProofKind.Area, $"a piece on its phase ends at {Length} or later");
        if (lattice is { Width: > 0, Drop: 0 })
        {
            Consider(lattice.Width, lattice.Length, aligned);
        }

        Consider(0, heights, aligned);
    }

    /// <summary>The bound, in grid units; 0 when no piece is aligned.</summary>
    public long Length { get; private set; }

    /// <summary>The argument that bounds the rows.</summary>
    public ProofKind Kind { get; private set; }

    /// <summary>Its figures in one line.</summary>
    public string Figures { get; private set; }

    /// <summary>Tries the points on all phases by area, then raises the rows of the best.</summary>
    /// <param name="width">Distance of the columns of points; 0 for none.</param>
    /// <param name="length">Distance of the rows.</param>
    /// <param name="aligned">The pieces that are aligned.</param>
    private void Consider(long width, long length, NestingPiece[] aligned)
    {
        var best = (Grid: default(MotifGrid), Pieces: aligned, Length: 0L);
        foreach (var pieces in aligned.Length == _problem.Pieces.Length ? [aligned] : new[] { aligned, [.. _problem.Pieces] })
        {
            // What a piece covers across depends on the place of the columns alone, and along on that of the rows.
            (long Y, long[] Along)[] rows =
            [
                .. Phases(aligned, length, 0, phase => phase.PhaseY)
                    .Select(y => (y, pieces.Select(new MotifGrid(width, length, 0, y).Along).ToArray())),
            ];
            foreach (long x in width == 0 ? [0] : Phases(aligned, width, _problem.Width % width, phase => phase.PhaseX))
            {
                var columns = new MotifGrid(width, length, x, 0);
                long reached = Columns(columns, pieces);
                long[] across = [.. pieces.Select(columns.Across)];
                foreach (var (y, along) in rows)
                {
                    var grid = columns with { Y = y };
                    long end = End(grid, pieces, RowsByArea(pieces, across, along, reached), best.Length);
                    best = end > best.Length ? (grid, pieces, end) : best;
                }
            }
        }

        if (best.Length > 0)
        {
            Raise(best.Grid, best.Pieces);
        }
    }

    /// <summary>The distinct phases of the pieces within a repeat, and one more place.</summary>
    private static IEnumerable<long> Phases(NestingPiece[] aligned, long repeat, long other, Func<Alignment, long> phase) =>
        aligned.Select(piece => MotifGrid.Modulo(phase(piece.Alignment!.Value), repeat)).Prepend(other).Distinct().Take(MostPhases);

    /// <summary>The rows that the points covered take at least; 0 when nothing covers a point, or a piece fits the strip nowhere.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="across">The columns of points that each covers.</param>
    /// <param name="along">The rows of points that each covers.</param>
    /// <param name="columns">The columns that there are.</param>
    private long RowsByArea(NestingPiece[] pieces, long[] across, long[] along, long columns)
    {
        _budget.Spend(pieces.Length);
        Int128 points = 0;
        long longest = 0;
        for (var piece = 0; piece < pieces.Length; piece++)
        {
            if (across[piece] > columns)
            {
                return 0;
            }

            points += (Int128)across[piece] * along[piece] * pieces[piece].Quantity;
            longest = across[piece] > 0 ? Math.Max(longest, along[piece]) : longest;
        }

        return columns == 0 ? 0 : Math.Max(longest, (long)((points + columns - 1) / columns));
    }

    /// <summary>The columns that any of the pieces can cover: a piece that cannot lie at the edge of the strip leaves columns there
    /// empty. 0 when a piece fits nowhere.</summary>
    private long Columns(MotifGrid grid, NestingPiece[] pieces)
    {
        var (first, last) = (long.MaxValue, -1L);
        foreach (var piece in pieces)
        {
            var (from, to) = grid.Reach(piece, _problem.Width);
            if (to < from)
            {
                return 0;
            }

            (first, last) = (Math.Min(first, from), Math.Max(last, to));
        }

        return last + 1 - first;
    }

    /// <summary>Where a layout ends at least whose blocks take a number of rows; 0 for none, and where that is no further than is known
    /// already.</summary>
    private static long End(MotifGrid grid, NestingPiece[] pieces, long rows, long known)
    {
        long end = long.MaxValue;
        foreach (var piece in rows == 0 ? [] : pieces)
        {
            if (grid.Across(piece) > 0 && grid.Along(piece) > 0)
            {
                end = Math.Min(end, grid.End(piece, rows - 1));
                if (end <= known)
                {
                    return 0;
                }
            }
        }

        return end == long.MaxValue ? 0 : end;
    }

    /// <summary>Bounds the rows as the length of a strip of its own, whose unit is a motif, and keeps what is better than before.</summary>
    private void Raise(MotifGrid grid, NestingPiece[] pieces)
    {
        var blocks = pieces
            .Select(piece => new NestingPiece
            {
                Width = grid.Across(piece),
                Length = grid.Along(piece),
                Quantity = piece.Quantity,
            })
            .Where(block => block.Width > 0 && block.Length > 0);
        var rows = new ProvenBound(new RectangleSet([.. blocks], Columns(grid, pieces)), SaleLadder.EveryUnit, _budget);

        // Steps that double while rows are ruled out, and halve when they are not: what rules a number of rows out rules out fewer.
        for (var (tries, step) = (0, 1L); tries < MostTries && step > 0; tries++)
        {
            long before = rows.Length;
            rows.Relax(before + step - 1);
            step = rows.Length > before ? step * 2 : step / 2;
        }

        long end = End(grid, pieces, rows.Length, Length);
        if (end > Length)
        {
            (Length, Kind) = (end, rows.Kind);
            Figures = $"in motifs, {rows.Figures}: {rows.Length} rows of {grid.Length}, the last of which ends at {end} or later";
        }
    }
}
