using System.Collections.Immutable;
using CushionService.Nesting.Audit;
using CushionService.Nesting.Rectangles.Proofs;

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

    public static StripLayout Nest(StripProblem problem, Effort? effort, CancellationToken cancellation)
    {
        var set = new RectangleSet(problem.Pieces, problem.Width);
        var budget = new StepBudget(StepsFor(effort, set.Copies), cancellation);
        bool free = problem.Flaws.IsDefaultOrEmpty && problem.Pieces.All(piece => piece.Alignment is null);
        long bound = Math.Max((set.Area + set.Width - 1) / set.Width, LongestMust(set));
        long length;
        var proof = ProofKind.Area;
        ImmutableArray<Placement> placements;
        if (free)
        {
            var search = new OrderSearch(set, problem.Sale, bound, budget);
            search.Run();
            length = search.Length;
            while (effort is not null && problem.Sale.RungFor(bound) < problem.Sale.RungFor(length) && set.Copies <= 60 && false)
            {
                long below = problem.Sale.Reach(problem.Sale.RungFor(length) - 1);
                var outcome = BoxProblem.Decide(set, below, StepsFor(effort, set.Copies), budget, search.X, search.Y, search.Turned, effort == Effort.Thorough ? 20 : 12, out bool relaxed);
                if (outcome == BoxOutcome.Impossible)
                {
                    bound = below + 1;
                    proof = relaxed ? ProofKind.Relaxation : ProofKind.Exhaustive;
                }
                else if (outcome == BoxOutcome.Unknown)
                {
                    break;
                }
                else
                {
                    length = 0;
                    for (var copy = 0; copy < set.Copies; copy++)
                    {
                        int kind = set.KindOf[copy];
                        length = Math.Max(length, search.Y[copy] + (search.Turned[copy] ? set.Across[kind] : set.Along[kind]));
                    }
                }
            }

            var builder = ImmutableArray.CreateBuilder<Placement>(set.Copies);
            for (var copy = 0; copy < set.Copies; copy++)
            {
                builder.Add(set.Place(copy, search.X[copy], search.Y[copy], search.Turned[copy]));
            }

            placements = builder.MoveToImmutable();
        }
        else
        {
            (length, placements) = ConstrainedSearch.Run(problem, bound, budget);
        }

        bool proven = problem.Sale.RungFor(bound) == problem.Sale.RungFor(length);
        var layout = new StripLayout
        {
            Length = length,
            LowerBound = bound,
            ProvenMinimal = proven,
            Proof = proven ? proof : ProofKind.None,
            ProofFigures = proven ? $"area {set.Area} / width {set.Width} gives at least {bound}" : "",
            Placements = placements,
            Steps = budget.Spent,
        };
        StripAudit.Check(problem, layout);
        return layout;
    }

    private static long StepsFor(Effort? effort, int copies) => effort switch
    {
        null => 0,
        Effort.Quick => Math.Min(copies * QuickShare, QuickMost),
        Effort.Standard => Math.Min(copies * StandardShare, StandardMost),
        _ => Math.Min(copies * ThoroughShare, ThoroughMost),
    };

    private static long LongestMust(RectangleSet set)
    {
        long longest = 0;
        for (var kind = 0; kind < set.Kinds; kind++)
        {
            longest = Math.Max(longest, set.Turns[kind] ? Math.Min(set.Across[kind], set.Along[kind]) : set.Along[kind]);
        }

        return longest;
    }
}
