using System.Collections.Immutable;
using CushionService.Nesting.Audit;

namespace CushionService.Nesting.Rectangles;

/// <summary>The kernel for rectangles on stock sheets: sheet after sheet, takes the one that costs least for the area laid on it.</summary>
internal static class SheetRectangles
{
    public static SheetLayout Nest(SheetProblem problem, Effort effort, CancellationToken cancellation)
    {
        var budget = new StepBudget(long.MaxValue, cancellation);
        var set = new RectangleSet(problem.Pieces, long.MaxValue);
        var passes = problem.Sheets.Select(sheet => new SkylinePass(set, sheet.Width, set.Copies)).ToArray();
        int?[] left = [.. problem.Sheets.Select(sheet => sheet.Available)];
        int[] order = [.. Enumerable.Range(0, set.Copies).OrderByDescending(copy => Area(set, copy))];
        var used = ImmutableArray.CreateBuilder<int>();
        var placements = ImmutableArray.CreateBuilder<Placement>();
        var from = 0;
        while (from < order.Length)
        {
            var (bestSheet, bestLaid, bestValue) = (-1, 0, 0.0);
            int[] bestOrder = [];
            for (var sheet = 0; sheet < passes.Length; sheet++)
            {
                if (left[sheet] is 0)
                {
                    continue;
                }

                int[] trial = order[from..];
                int laid = passes[sheet].Fill(trial, problem.Sheets[sheet].Length, budget);
                double value = trial.Take(laid).Sum(copy => (double)Area(set, copy)) / Math.Max(problem.Sheets[sheet].Cost, 1e-9);
                if (value > bestValue)
                {
                    (bestSheet, bestLaid, bestValue, bestOrder) = (sheet, laid, value, trial);
                }
            }

            if (bestSheet < 0)
            {
                break;
            }

            var pass = passes[bestSheet];
            placements.AddRange(bestOrder.Take(bestLaid).Select(copy =>
                set.Place(copy, pass.X[copy], pass.Y[copy], pass.Turned[copy], used.Count)));
            used.Add(bestSheet);
            left[bestSheet]--;
            bestOrder.CopyTo(order, from);
            from += bestLaid;
        }

        var layout = new SheetLayout
        {
            Sheets = used.ToImmutable(),
            Cost = used.Sum(sheet => problem.Sheets[sheet].Cost),
            LowerBound = 0,
            Placements = placements.ToImmutable(),
            Unplaced = [.. order.Skip(from).Select(copy => set.Place(copy, 0, 0, false)).Select(copy => (copy.Piece, copy.Copy))],
            Steps = budget.Spent,
        };
        SheetAudit.Check(problem, layout);
        return layout;
    }

    private static long Area(RectangleSet set, int copy) => set.Across[set.KindOf[copy]] * set.Along[set.KindOf[copy]];
}
