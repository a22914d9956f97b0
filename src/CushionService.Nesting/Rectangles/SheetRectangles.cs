using CushionService.Nesting.Rectangles.Sheets;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles;

/// <summary>The kernel for rectangles on stock sheets: a local search over the order in which a plan takes the copies.</summary>
/// <remarks>Two copies change places in the order, and what is no worse is kept: more copies laid, then
/// a lower cost, then less on the last sheet. It ends at the bound, or when the steps are
/// spent.</remarks>
internal static class SheetRectangles
{
    /// <summary>Nests at an effort.</summary>
    /// <param name="problem">The problem, checked.</param>
    /// <param name="effort">How many steps to spend.</param>
    /// <param name="sharedBy">How many problems share the steps.</param>
    /// <param name="cancellation">Observed at least every 20 ms of work.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    /// <returns>The best plan found; copies that found no room on a sheet are named in it as unplaced.</returns>
    public static SheetLayout Nest(SheetProblem problem, Effort effort, int sharedBy, CancellationToken cancellation)
    {
        var set = new RectangleSet(problem.Pieces, long.MaxValue);
        var budget = new StepBudget(RectangleSteps.For(effort, set.Copies) / sharedBy, cancellation);
        // What the area alone must cost: weak where pieces leave waste, but cheap, and enough to stop at.
        long bound = SheetCost.AtLeast(problem, set.Area);
        int[] order = [.. Enumerable.Range(0, set.Copies)];
        // The first plan takes the copies by falling area: what is large is hardest to find room for later.
        Array.Sort(set.KindOf.Select(kind => -set.Across[kind] * set.Along[kind]).ToArray(), order);
        var best = new SheetPlan(problem, set);
        best.Run(order, budget);
        var next = new SheetPlan(problem, set);
        var random = new Xorshift(1);
        while (order.Length > 1 && !budget.Exhausted && !(best.Laid == order.Length && best.Cost <= bound))
        {
            int a = random.Next(order.Length);
            int b = random.Next(order.Length);
            // Equal copies that change places give the same plan; the step keeps the loop finite where all are equal.
            if (set.KindOf[order[a]] == set.KindOf[order[b]])
            {
                budget.Spend(1);
                continue;
            }

            (order[a], order[b]) = (order[b], order[a]);
            next.Run(order, budget);
            if (NoWorse(next, best))
            {
                (best, next) = (next, best);
            }
            else
            {
                (order[a], order[b]) = (order[b], order[a]);
            }
        }

        return new SheetLayout
        {
            Sheets = [.. best.Sheets],
            Cost = best.Cost,
            LowerBound = Math.Min(bound, best.Cost),
            Placements = [.. best.Order.Take(best.Laid).Select(copy => set.Place(copy, best.Layout[copy], best.SheetOf[copy]))],
            Unplaced = [.. best.Order.Skip(best.Laid).Select(copy => set.Place(copy, default)).Select(copy => (copy.Piece, copy.Copy))],
            Steps = budget.Spent,
        };
    }

    /// <summary>Whether a plan is at least as good as another.</summary>
    /// <param name="plan">The plan of the changed order.</param>
    /// <param name="other">The plan kept so far.</param>
    /// <returns>True for equals as well: a walk along equal plans gets out of flat places.</returns>
    private static bool NoWorse(SheetPlan plan, SheetPlan other) =>
        plan.Laid != other.Laid ? plan.Laid > other.Laid
        : plan.Cost != other.Cost ? plan.Cost < other.Cost
        : plan.OnLast <= other.OnLast;
}
