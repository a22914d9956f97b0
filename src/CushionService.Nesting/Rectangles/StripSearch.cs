using CushionService.Nesting.Rectangles.Beams;
using CushionService.Nesting.Rectangles.PerfectBoxes;
using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles;

/// <summary>Closes the gap between a layout and a bound, from both ends, until they are sold as the same length or the
/// steps are spent: passes, relaxations, then in turns the box at the bound where it is nearly full, local search, beams,
/// and exact search on the rung below.</summary>
internal static class StripSearch
{
    // Of all steps, one in this many goes to lengths between those that can be bought; nothing does where that is fewer than that many to a
    // copy, as at quick: they would find little, and take longer than the length to buy has.
    private const int LeftOverPart = 16;
    private const long LeastToACopy = 5_000;

    /// <summary>Searches until the layout is sold as the bound is, or the steps are spent.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="sale">The lengths that can be bought.</param>
    /// <param name="bound">A length that no layout can beat; raised here.</param>
    /// <param name="budget">Pays for the steps.</param>
    /// <returns>Holds the best layout.</returns>
    public static SequenceSearch Run(RectangleSet set, SaleLadder sale, ProvenBound bound, StepBudget budget)
    {
        var layouts = SkylineSearch.Start(set, sale, budget);
        layouts.Start(bound.Goal);
        BoxBeams? beams = null;
        PerfectBoxRestarts? perfect = null;
        bool turns = Array.IndexOf(set.Turns, true) >= 0;

        double proving = SearchShares.ForProof(set);
        // Rounds of growing shares: what is soon found or ruled out costs little, and no part waits for
        // another to end.
        for (
            long share = Math.Max(budget.Limit / 64, 1);
            layouts.Length > bound.Goal && !budget.Exhausted;
            share = Math.Min(share, budget.Limit / 4) * 4
        )
        {
            // A round never asks for more than what is left, so that the last one is cut short rather than left out.
            long before = budget.Spent;
            long steps = Math.Min(share, budget.Limit - budget.Spent);
            bound.Relax(Below());
            if (layouts.Length <= bound.Goal)
            {
                break;
            }

            double full = SearchShares.ForFullBox(set, turns, budget.Limit);
            perfect ??= full > 0 ? new PerfectBoxRestarts(set, budget) : null;
            // A layout at the goal ends the search: the bound says that nothing shorter is sold.
            if (perfect?.IsWorthwhile(bound.Goal) == true && perfect.Run(bound.Goal, (long)(steps * full)))
            {
                layouts.Adopt(perfect.Layout);
                break;
            }

            steps = Math.Max(0, steps - (budget.Spent - before));
            beams ??= new BoxBeams(set, sale, budget);
            long improving = bound.Box is null ? steps : (long)(steps * (1 - proving));
            long end = budget.Spent + improving;
            layouts.Improve(bound.Goal, beams.Apply ? improving / SearchShares.LocalPart(set, turns, budget.Limit) : improving);
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

        // What is sold as short as can be may still be laid shorter, for the sake of what is left over.
        if (layouts.Length <= bound.Goal && budget.Limit / LeftOverPart >= LeastToACopy * set.Copies)
        {
            layouts.Shorten(bound.Length, Math.Min(budget.Limit / LeftOverPart, budget.Limit - budget.Spent));
        }

        return layouts;

        // The greatest length of the rung below the one that the layout is sold at: to rule it out is to prove the
        // layout.
        long Below() => sale.Reach(sale.RungFor(layouts.Length) - 1);
    }
}
