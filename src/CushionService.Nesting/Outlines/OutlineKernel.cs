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
    // Steps for up to 20 copies; a step is four overlaps added up. More copies get more: a round takes longer, and takes more rounds.
    private const long Quick = 700_000;
    private const long Standard = 15_000_000;
    private const long Thorough = 1_700_000_000;

    public static StripLayout Nest(StripProblem problem, Effort effort, CancellationToken cancellation)
    {
        OutlineCheck.Check(problem);
        var floor = StripRectangles.Nest(problem, effort == Effort.Quick ? Effort.Quick : Effort.Standard, cancellation);
        var growth = Math.Pow(Math.Max(1, problem.Pieces.Sum(piece => piece.Quantity) / 20.0), 4);
        var steps = effort switch
        {
            Effort.Quick => (long)(Quick * Math.Min(25, growth)),
            Effort.Standard => (long)(Standard * Math.Min(12, growth)),
            _ => Thorough,
        };
        return Search(problem, floor, steps, cancellation);
    }

    /// <summary>Shortens a layout of the bounding boxes in so many steps; the answer is not audited.</summary>
    public static StripLayout Search(StripProblem problem, StripLayout floor, long steps, CancellationToken cancellation, int threads = 2)
    {
        var copies = new Copies(problem, cancellation);
        var budget = new StepBudget(steps, cancellation);
        var inner = InnerRectangles.Of(problem);
        var bound = OutlineBound.Of(copies).Raised(inner, Below(floor.Length), budget);
        var search = new OutlineSearch(copies, problem.Sale, bound.Length, budget);
        search.Run(floor, threads, cancellation);
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
}
