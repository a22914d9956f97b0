using CushionService.Nesting.Outlines.Bounding;
using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Rectangles;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines;

/// <summary>The kernel for problems with outlines on a strip: bound, floor, search.</summary>
/// <remarks>The floor is the layout of the bounding boxes, so an answer always exists and is never longer than what a quarter of a quick or
/// standard search finds for them. A thorough search leaves its steps to the outlines.</remarks>
internal static class OutlineKernel
{
    /// <summary>The floor takes one part in this many of a search of rectangles, so that floor and search together keep the effort's
    /// time.</summary>
    public const int ForFloor = 4;

    // What a proof may take: one part in this many of the steps, and a number of steps at most; and the most different pieces.
    private const int ForProof = 20;
    private const long MostForProof = 20_000_000;
    private const int MostBoundedPieces = 60;

    /// <summary>Nests at an effort.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="effort">How many steps to spend.</param>
    /// <param name="sharedBy">How many problems share these steps.</param>
    /// <param name="cancellation">Observed at least every 20 ms of work.</param>
    /// <exception cref="ArgumentException">An outline is not what a piece's outline must be.</exception>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static StripLayout Nest(StripProblem problem, Effort effort, int sharedBy, CancellationToken cancellation)
    {
        OutlineCheck.Check(problem);
        var floor = StripRectangles.Nest(
            problem,
            effort == Effort.Quick ? Effort.Quick : Effort.Standard,
            sharedBy * ForFloor,
            cancellation
        );
        return Search(problem, floor, OutlineSteps.For(effort, problem.Pieces.Sum(piece => piece.Quantity)) / sharedBy, cancellation);
    }

    /// <summary>Shortens a layout of the bounding boxes; the answer is not audited.</summary>
    /// <param name="problem">The problem, checked.</param>
    /// <param name="floor">A layout of the bounding boxes.</param>
    /// <param name="steps">How many steps to spend.</param>
    /// <param name="cancellation">Observed at least every 20 ms of work.</param>
    /// <param name="threads">1 or 2; the answer is the same.</param>
    /// <param name="seed">Begins the chances of the search; benchmarks try several.</param>
    /// <returns>A layout that is at most as long as the floor.</returns>
    public static StripLayout Search(
        StripProblem problem,
        StripLayout floor,
        long steps,
        CancellationToken cancellation,
        int threads = 2,
        ulong seed = 7919
    )
    {
        var copies = new Copies(problem, cancellation);
        var budget = new StepBudget(steps, cancellation);
        var inner = InnerSets(problem);
        var bound = Raised(OutlineBound.Of(copies), floor.Length);
        var search = Searched(problem, copies, floor, bound.Length, budget, threads, seed, cancellation);
        var (best, length) = (search.Best, (long)search.Length);
        bound = length < floor.Length ? Raised(bound, length) : bound;
        var proven = problem.Sale.RungFor(length) == problem.Sale.RungFor(bound.Length);
        return new StripLayout
        {
            Length = length,
            LowerBound = bound.Length,
            ProvenMinimal = proven,
            Proof = proven ? bound.Kind : ProofKind.None,
            ProofFigures = proven ? bound.Figures : "",
            Placements =
            [
                .. Enumerable.Range(0, copies.Count).Select(copy => copies.Place(copy, best.Turn[copy], best.X[copy], best.Y[copy])),
            ],
            Steps = floor.Steps + budget.Spent,
        };

        // The longest layout that would be sold shorter is to be ruled out.
        OutlineBound Raised(OutlineBound known, long longer)
        {
            var shorter = problem.Sale.Reach(problem.Sale.RungFor(longer) - 1);
            foreach (var set in inner)
            {
                known = known.Raised(set, problem.Sale, shorter, Math.Min(MostForProof, steps / ForProof), budget);
            }

            return known;
        }
    }

    /// <summary>Rectangles within the pieces, chosen in several ways; none where the pieces are too many to be bounded so.</summary>
    /// <param name="problem">The problem, checked.</param>
    private static RectangleSet?[] InnerSets(StripProblem problem) =>
        problem.Pieces.Length <= MostBoundedPieces ? [InnerRectangles.Of(problem), InnerBands.Of(problem)] : [];

    /// <summary>Searches with the outlines; with their convex hulls where they are too jagged for the steps; and where even these are too
    /// many for them, the layout of the bounding boxes is the answer.</summary>
    /// <returns>The search that holds the shortest layout.</returns>
    private static OutlineSearch Searched(
        StripProblem problem,
        Copies copies,
        StripLayout floor,
        long bound,
        StepBudget budget,
        int threads,
        ulong seed,
        CancellationToken cancellation
    )
    {
        var search = new OutlineSearch(copies, problem.Sale, bound, budget);
        search.Start(floor);
        if (search.Prepare())
        {
            search.Run(threads, seed, cancellation);
            return search;
        }

        var coarse = new OutlineSearch(new Copies(problem, cancellation, hulls: true), problem.Sale, bound, budget);
        coarse.Start(floor);
        if (coarse.Prepare())
        {
            coarse.Run(threads, seed, cancellation);
            return coarse;
        }

        return search;
    }
}
