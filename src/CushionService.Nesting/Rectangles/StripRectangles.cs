using System.Collections.Immutable;
using CushionService.Nesting.Audit;

namespace CushionService.Nesting.Rectangles;

/// <summary>The kernel for rectangles on a strip: bound, search, proof.</summary>
internal static class StripRectangles
{
    // Steps for each copy, and for all copies at most.
    private const long QuickShare = 15_000;
    private const long QuickMost = 3_000_000;
    private const long StandardShare = 375_000;
    private const long StandardMost = 75_000_000;
    private const long ThoroughShare = 15_000_000;
    private const long ThoroughMost = 600_000_000;

    /// <summary>Nests at an effort; null is the floor, a single pass.</summary>
    public static StripLayout Nest(StripProblem problem, Effort? effort, CancellationToken cancellation)
    {
        var set = new RectangleSet(problem.Pieces, problem.Width);
        var budget = new StepBudget(StepsFor(effort, set.Copies), cancellation);
        bool free = problem.Flaws.IsDefaultOrEmpty && problem.Pieces.All(piece => piece.Alignment is null);
        var search = new StripSearch(set, problem.Sale, budget);
        var (length, placements) = (0L, ImmutableArray<Placement>.Empty);
        if (free)
        {
            search.Run();
            (length, placements) = (search.Layouts.Length, Read(set, search.Layouts));
        }
        else
        {
            (length, placements) = ConstrainedSearch.Run(problem, search.Bound, budget);
        }

        bool proven = problem.Sale.RungFor(search.Bound) >= problem.Sale.RungFor(length);
        var layout = new StripLayout
        {
            Length = length,
            LowerBound = Math.Min(search.Bound, length),
            ProvenMinimal = proven,
            Proof = proven ? search.Proof : ProofKind.None,
            ProofFigures = proven ? search.ProofFigures : "",
            Placements = placements,
            Steps = budget.Spent,
        };
        StripAudit.Check(problem, layout);
        return layout;
    }

    private static ImmutableArray<Placement> Read(RectangleSet set, OrderSearch best)
    {
        var placements = ImmutableArray.CreateBuilder<Placement>(set.Copies);
        for (var copy = 0; copy < set.Copies; copy++)
        {
            placements.Add(set.Place(copy, best.X[copy], best.Y[copy], best.Turned[copy]));
        }

        return placements.MoveToImmutable();
    }

    private static long StepsFor(Effort? effort, int copies) => effort switch
    {
        null => 0,
        Effort.Quick => Math.Min(copies * QuickShare, QuickMost),
        Effort.Standard => Math.Min(copies * StandardShare, StandardMost),
        _ => Math.Min(copies * ThoroughShare, ThoroughMost),
    };
}
