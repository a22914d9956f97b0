using System.Collections.Immutable;
using System.Diagnostics;
using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Repeats;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles;

/// <summary>The kernel for rectangles on a strip: bound, search, proof.</summary>
internal static class StripRectangles
{
    /// <summary>Nests at an effort, whose steps several problems share; null is the floor, a single pass.</summary>
    /// <param name="problem">The problem, checked.</param>
    /// <param name="effort">How many steps to spend; null for a single pass.</param>
    /// <param name="sharedBy">How many problems share the steps.</param>
    /// <param name="cancellation">Observed at least every 20 ms of work.</param>
    /// <exception cref="ArgumentException">A piece fits the strip on no phase of its
    /// repeat.</exception>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    /// <returns>The shortest layout found, with a bound that no layout beats, and whether the two are sold as the same
    /// length.</returns>
    public static StripLayout Nest(StripProblem problem, Effort? effort, int sharedBy, CancellationToken cancellation)
    {
        var set = new RectangleSet(problem.Pieces, problem.Width);
        var budget = new StepBudget(RectangleSteps.For(effort, set.Copies) / sharedBy, cancellation);
        // One aligned piece, or one flaw anywhere, takes the whole problem to the kernel that keeps lists of free
        // rectangles.
        bool free = problem.Flaws.IsDefaultOrEmpty && problem.Pieces.All(piece => piece.Alignment is null);
        var bound = new ProvenBound(set, problem.Sale, budget);
        var (length, placements) = free ? Free(problem, set, bound, budget) : Constrained(problem, set, bound, budget);
        Debug.Assert(bound.Length <= length, "A bound exceeds the length of a layout.");
        bool proven = problem.Sale.RungFor(bound.Length) >= problem.Sale.RungFor(length);
        return new StripLayout
        {
            Length = length,
            LowerBound = Math.Min(bound.Length, length),
            ProvenMinimal = proven,
            Proof = proven ? bound.Kind : ProofKind.None,
            ProofFigures = proven ? bound.Figures : "",
            Placements = placements,
            Steps = budget.Spent,
        };
    }

    /// <summary>Where pieces may lie anywhere: skylines, beams and exact search.</summary>
    /// <param name="problem">Without repeats and flaws.</param>
    /// <param name="set">The problem's copies.</param>
    /// <param name="bound">Raised by what the search proves.</param>
    /// <param name="budget">Pays for the steps.</param>
    private static (long Length, ImmutableArray<Placement> Placements) Free(
        StripProblem problem,
        RectangleSet set,
        ProvenBound bound,
        StepBudget budget
    )
    {
        var best = StripSearch.Run(set, problem.Sale, bound, budget);
        return (best.Length, best.Layout.Placements());
    }

    /// <summary>Where a repeat or flaws forbid most positions. Both only forbid more, so that every
    /// bound for free pieces holds here too.</summary>
    /// <param name="problem">With a repeat, flaws or both.</param>
    /// <param name="set">The problem's copies.</param>
    /// <param name="bound">Raised by the repeats first, and by relaxations where steps are left.</param>
    /// <param name="budget">Pays for the steps.</param>
    private static (long Length, ImmutableArray<Placement> Placements) Constrained(
        StripProblem problem,
        RectangleSet set,
        ProvenBound bound,
        StepBudget budget
    )
    {
        if (problem.Pieces.Any(piece => piece.Alignment is not null))
        {
            var repeats = new RepeatBound(problem, budget);
            bound.RaiseTo(repeats.Length, repeats.Kind, repeats.Figures);
        }

        var best = RepeatSearch.Start(problem, set, bound.Goal, budget);
        if (!budget.Exhausted)
        {
            best.Improve(bound.Goal, budget.Limit - budget.Spent);
            bound.Relax(problem.Sale.Reach(problem.Sale.RungFor(best.Length) - 1));
        }

        return (best.Length, best.Layout.Placements());
    }
}
