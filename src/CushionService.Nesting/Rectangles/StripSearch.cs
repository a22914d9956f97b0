using CushionService.Nesting.Rectangles.Beams;
using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles;

/// <summary>Closes the gap between a layout and a bound, from both ends, until they stand on the same saleable length or the
/// steps are spent: passes, relaxations, then turns of local search, beams and exact search on the rung below.</summary>
internal static class StripSearch
{
    public static SequenceSearch Run(RectangleSet set, SaleLadder sale, ProvenBound bound, StepBudget budget)
    {
        var layouts = SequenceSearch.OnSkyline(set, sale, budget);
        layouts.Start(bound.Goal);
        BoxBeams? beams = null;
        bool turns = Array.IndexOf(set.Turns, true) >= 0;

        // Few kinds or few copies can be searched through; many different ones are found sooner than ruled out.
        double proving =
            set.Kinds <= 10 ? 0.7
            : set.Copies <= 24 ? 0.4
            : 0.1;
        for (
            long share = Math.Max(budget.Limit / 64, 1);
            layouts.Length > bound.Goal && !budget.Exhausted;
            share = Math.Min(share, budget.Limit / 4) * 4
        )
        {
            long before = budget.Spent;
            long steps = Math.Min(share, budget.Limit - budget.Spent);
            bound.Relax(Below());
            if (layouts.Length <= bound.Goal)
            {
                break;
            }

            beams ??= new BoxBeams(set, sale, budget);
            long improving = bound.Box is null ? steps : (long)(steps * (1 - proving));
            layouts.Improve(bound.Goal, beams.Apply ? improving / (turns ? 2 : 8) : improving);
            long end = before + improving;
            while (layouts.Length > bound.Goal && budget.Spent < end && beams.Improve(layouts.Length, bound.Goal, end - budget.Spent))
            {
                layouts.Adopt(beams.Layout);
            }

            if (layouts.Length > bound.Goal)
            {
                bound.Relax(Below());
            }

            if (layouts.Length > bound.Goal && bound.Decide(Below(), (long)(steps * proving)))
            {
                layouts.Adopt(bound.Box!.Layout);
            }
            else if (budget.Spent == before && share >= budget.Limit / 4)
            {
                // Neither search has anything left to try.
                break;
            }
        }

        return layouts;

        long Below() => sale.Reach(sale.RungFor(layouts.Length) - 1);
    }
}
