using System.Collections.Immutable;

namespace CushionService.Nesting.Rectangles;

/// <summary>Places rectangles where a repeat or flaws forbid most positions: each copy in turn goes to the lowest, then
/// leftmost, free corner position that its phase allows.</summary>
internal static class ConstrainedSearch
{
    public static (long Length, ImmutableArray<Placement> Placements) Run(StripProblem problem, long bound, StepBudget budget)
    {
        long goal = problem.Sale.Reach(problem.Sale.RungFor(bound));
        var copies = Copies(problem);
        (long Length, ImmutableArray<Placement> Placements) best = Pass(problem, copies, budget);
        var random = new Xorshift(1);
        while (best.Length > goal && !budget.Exhausted && copies.Length > 1)
        {
            int a = random.Next(copies.Length);
            int b = random.Next(copies.Length);
            (copies[a], copies[b]) = (copies[b], copies[a]);
            var next = Pass(problem, copies, budget);
            if (next.Length <= best.Length)
            {
                best = next;
            }
            else
            {
                (copies[a], copies[b]) = (copies[b], copies[a]);
            }
        }

        return best;
    }

    private static (int Piece, int Copy)[] Copies(StripProblem problem) =>
    [
        .. Enumerable.Range(0, problem.Pieces.Length)
            .SelectMany(piece => Enumerable.Range(0, problem.Pieces[piece].Quantity).Select(copy => (piece, copy)))
            .OrderByDescending(key => problem.Pieces[key.piece].Alignment is not null)
            .ThenByDescending(key => problem.Pieces[key.piece].Width * problem.Pieces[key.piece].Length),
    ];

    private static (long Length, ImmutableArray<Placement> Placements) Pass(
        StripProblem problem, (int Piece, int Copy)[] copies, StepBudget budget)
    {
        var taken = new List<GridRectangle>(problem.Flaws.IsDefault ? [] : problem.Flaws);
        var placements = ImmutableArray.CreateBuilder<Placement>(copies.Length);
        long length = 0;
        foreach (var (index, copy) in copies)
        {
            var piece = problem.Pieces[index];
            var best = Lowest(problem, piece, piece.Width, piece.Length, taken, budget);
            var turn = 0;
            if (piece.Rotations == Rotations.QuarterTurns && piece.Width != piece.Length)
            {
                var turned = Lowest(problem, piece, piece.Length, piece.Width, taken, budget);
                if (best is null || (turned is { } t && t.Y + t.Length < best.Value.Y + best.Value.Length))
                {
                    (best, turn) = (turned, 90);
                }
            }

            var found = best ?? throw new ArgumentException($"Piece {index} fits the strip on no phase of the repeat.", nameof(problem));
            taken.Add(found);
            length = Math.Max(length, found.Y + found.Length);
            placements.Add(new Placement(index, copy, 0, found.X, found.Y, turn));
        }

        return (length, placements.MoveToImmutable());
    }

    private static GridRectangle? Lowest(
        StripProblem problem, NestingPiece piece, long across, long along, List<GridRectangle> taken, StepBudget budget)
    {
        GridRectangle? best = null;
        Consider(0);
        foreach (var r in taken)
        {
            Consider(r.X + r.Width);
            Consider(r.X - across);
        }

        return best;

        void Consider(long from)
        {
            from = Math.Max(from, 0);
            var (step, phase) = piece.Alignment is { } a && problem.Repeat!.Width > 0 ? (problem.Repeat.Width, a.PhaseX) : (1, 0);
            long x = from + Modulo(phase - from, step);
            if (x + across > problem.Width)
            {
                return;
            }

            long y = Drop(problem, piece, x, across, along, taken, budget);
            if (best is not { } b || y < b.Y || (y == b.Y && x < b.X))
            {
                best = new GridRectangle(x, y, across, along);
            }
        }
    }

    /// <summary>The lowest free y at the given x that the phase allows.</summary>
    private static long Drop(
        StripProblem problem, NestingPiece piece, long x, long across, long along, List<GridRectangle> taken, StepBudget budget)
    {
        var (step, phase) = (1L, 0L);
        if (piece.Alignment is { } a)
        {
            var lattice = problem.Repeat!;
            step = lattice.Length;
            phase = a.PhaseY + (lattice.Width == 0 ? 0 : (x - a.PhaseX) / lattice.Width * lattice.Drop);
        }

        long y = Modulo(phase, step);
        bool moved = true;
        while (moved)
        {
            moved = false;
            budget.Spend(taken.Count);
            foreach (var r in taken)
            {
                if (r.X < x + across && x < r.X + r.Width && r.Y < y + along && y < r.Y + r.Length)
                {
                    long over = r.Y + r.Length;
                    y = over + Modulo(phase - over, step);
                    moved = true;
                }
            }
        }

        return y;
    }

    private static long Modulo(long value, long modulus) => ((value % modulus) + modulus) % modulus;
}
