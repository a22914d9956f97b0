using CushionService.Nesting.Outlines.Bounding;
using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Rectangles;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines;

/// <summary>The kernel for problems with outlines on a strip: bound, floor, search.</summary>
/// <remarks>The floor is the layout of the bounding boxes, so an answer always exists and is never longer than what a quick or standard search finds for
/// them. A thorough search leaves its steps to the outlines.</remarks>
internal static class OutlineKernel
{
    // Steps for each copy, and for all copies at most. A step takes about 8 ns on one core of a small server.
    private const long QuickShare = 450_000;
    private const long QuickMost = 9_000_000;
    private const long StandardShare = 4_000_000;
    private const long StandardMost = 100_000_000;
    private const long ThoroughShare = 100_000_000;
    private const long ThoroughMost = 3_000_000_000;

    /// <summary>Nests at an effort, whose steps so many problems share.</summary>
    public static StripLayout Nest(StripProblem problem, Effort effort, int sharedBy, CancellationToken cancellation)
    {
        OutlineCheck.Check(problem);
        var floor = StripRectangles.Nest(problem, effort == Effort.Quick ? Effort.Quick : Effort.Standard, sharedBy, cancellation);
        long copies = problem.Pieces.Sum(piece => piece.Quantity);
        var steps = effort switch
        {
            Effort.Quick => Math.Min(copies * QuickShare, QuickMost),
            Effort.Standard => Math.Min(copies * StandardShare, StandardMost),
            _ => Math.Min(copies * ThoroughShare, ThoroughMost),
        };
        return Search(problem, floor, steps / sharedBy, cancellation);
    }

    /// <summary>Shortens a layout of the bounding boxes in so many steps; the answer is not audited.</summary>
    public static StripLayout Search(StripProblem problem, StripLayout floor, long steps, CancellationToken cancellation, int threads = 2)
    {
        var copies = new Copies(problem, cancellation);
        var budget = new StepBudget(steps, cancellation);
        var inner = InnerRectangles.Of(problem);
        var bound = OutlineBound.Of(copies).Raised(inner, Below(floor.Length), budget);
        var search = Searched(problem, copies, floor, bound.Length, budget, threads, cancellation);
        var (best, length) = (search.Best, (long)search.Length);
        bound = length < floor.Length ? bound.Raised(inner, Below(length), budget) : bound;
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

        long Below(long longer) => problem.Sale.Reach(problem.Sale.RungFor(longer) - 1);
    }

    /// <summary>Searches with the outlines; with their convex hulls where they are too jagged for the steps; and where even these are too many
    /// for them, the layout of the bounding boxes is the answer.</summary>
    private static OutlineSearch Searched(
        StripProblem problem,
        Copies copies,
        StripLayout floor,
        long bound,
        StepBudget budget,
        int threads,
        CancellationToken cancellation
    )
    {
        var search = new OutlineSearch(copies, problem.Sale, bound, budget);
        search.Start(floor);
        if (search.Prepare())
        {
            search.Run(threads, cancellation);
            return search;
        }

        var coarse = new OutlineSearch(new Copies(problem, cancellation, hulls: true), problem.Sale, bound, budget);
        coarse.Start(floor);
        if (coarse.Prepare())
        {
            coarse.Run(threads, cancellation);
            return coarse;
        }

        return search;
    }
}
