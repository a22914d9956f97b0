using System.Collections.Immutable;
using CushionService.Nesting.Audit;

namespace CushionService.Nesting.Rectangles;

/// <summary>The kernel for rectangles on a strip: bound, search, proof.</summary>
internal static class StripRectangles
{
    // Steps for 20 copies; more copies get as many passes' worth.
    private const long Quick = 100_000;
    private const long Standard = 25 * Quick;
    private const long Thorough = 40 * Standard;

    public static StripLayout Nest(StripProblem problem, Effort effort, CancellationToken cancellation)
    {
        var set = new RectangleSet(problem.Pieces, problem.Width);
        var budget = new StepBudget(StepsFor(effort), cancellation);
        bool free = problem.Flaws.IsDefaultOrEmpty && problem.Pieces.All(piece => piece.Alignment is null);
        long bound = Math.Max((set.Area + set.Width - 1) / set.Width, LongestMust(set));
        long length;
        ImmutableArray<Placement> placements;
        if (free)
        {
            var search = new OrderSearch(set, problem.Sale, bound, budget);
            search.Run();
            length = search.Length;
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
            Proof = proven ? ProofKind.Area : ProofKind.None,
            ProofFigures = proven ? $"area {set.Area} / width {set.Width} gives at least {bound}" : "",
            Placements = placements,
            Steps = budget.Spent,
        };
        StripAudit.Check(problem, layout);
        return layout;
    }

    private static long StepsFor(Effort effort) => effort switch
    {
        Effort.Quick => Quick,
        Effort.Standard => Standard,
        _ => Thorough,
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
