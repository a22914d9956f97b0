using System.Diagnostics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Sheets;

/// <summary>Fills sheets one after the other with copies in a given order; each time it takes the sheet that costs least for the area
/// laid on it, and at the end a cheaper one for the last sheet if its copies fit that too.</summary>
internal sealed class SheetPlan
{
    private readonly SheetProblem _problem;
    private readonly RectangleSet _set;

    // A pass for each kind of sheet, and how many are left of each.
    private readonly SkylinePass[] _passes;
    private readonly int[] _trial;
    private readonly int[] _bestTrial;
    private readonly int[] _available;

    /// <summary>Sizes everything once.</summary>
    /// <param name="problem">The sheets.</param>
    /// <param name="set">All copies.</param>
    public SheetPlan(SheetProblem problem, RectangleSet set)
    {
        (_problem, _set) = (problem, set);
        _passes = [.. problem.Sheets.Select(sheet => new SkylinePass(set, sheet.Width, set.Copies))];
        (_trial, _bestTrial) = (new int[set.Copies], new int[set.Copies]);
        _available = new int[problem.Sheets.Length];
        (Order, SheetOf) = (new int[set.Copies], new int[set.Copies]);
        Layout = new RectangleLayout(set);
    }

    /// <summary>The sheets used, as indices into the problem's sheets.</summary>
    public List<int> Sheets { get; } = [];

    /// <summary>The copies, those laid first, sheet by sheet.</summary>
    public int[] Order { get; }

    /// <summary>How many copies were laid.</summary>
    public int Laid { get; private set; }

    /// <summary>Which of the used sheets each laid copy is on.</summary>
    public int[] SheetOf { get; }

    /// <summary>Where each laid copy lies on its sheet.</summary>
    public RectangleLayout Layout { get; }

    /// <summary>Sum of the costs of the sheets used.</summary>
    public long Cost { get; private set; }

    /// <summary>Area laid on the last sheet: the less, the nearer the plan is to doing without it.</summary>
    public long OnLast { get; private set; }

    /// <summary>Lays what it can.</summary>
    /// <param name="order">The copies, those to be laid first in front; not changed.</param>
    /// <param name="budget">Pays for the passes.</param>
    public void Run(int[] order, StepBudget budget)
    {
        order.CopyTo(Order, 0);
        Sheets.Clear();
        (Laid, Cost, OnLast) = (0, 0, 0);
        for (var sheet = 0; sheet < _available.Length; sheet++)
        {
            _available[sheet] = _problem.Sheets[sheet].Available ?? int.MaxValue;
        }

        while (Laid < Order.Length)
        {
            var (best, bestLaid, bestArea, left) = (-1, 0, 0L, Order.Length - Laid);
            for (var sheet = 0; sheet < _passes.Length; sheet++)
            {
                if (_available[sheet] == 0)
                {
                    continue;
                }

                Order.AsSpan(Laid).CopyTo(_trial);
                int laid = _passes[sheet].Fill(_trial.AsSpan(0, left), _problem.Sheets[sheet].Length, budget);
                long area = Area(_trial.AsSpan(0, laid));
                if (laid > 0 && (best < 0 || Better(sheet, laid == left, area, best, bestLaid == left, bestArea)))
                {
                    (best, bestLaid, bestArea) = (sheet, laid, area);
                    _trial.AsSpan(0, left).CopyTo(_bestTrial);
                }
            }

            if (best < 0)
            {
                return;
            }

            _bestTrial.AsSpan(0, left).CopyTo(Order.AsSpan(Laid));
            Take(best, bestLaid);
            (OnLast, Cost) = (bestArea, Cost + _problem.Sheets[best].Cost);
        }
    }

    /// <summary>Uses a sheet for the next copies, as its pass laid them last.</summary>
    /// <param name="sheet">Its index among the problem's sheets.</param>
    /// <param name="count">How many copies, at least 1.</param>
    private void Take(int sheet, int count)
    {
        var pass = _passes[sheet];
        foreach (int copy in Order.AsSpan(Laid, count))
        {
            var (x, y, turned) = pass.Layout[copy];
            Layout.Put(copy, x, y, turned);
            SheetOf[copy] = Sheets.Count;
        }

        Debug.Assert(_available[sheet] > 0 && count > 0, "A sheet is taken that is not there, or for nothing.");
        Sheets.Add(sheet);
        _available[sheet]--;
        Laid += count;
    }

    // A sheet that takes all that is left competes on its cost; otherwise the least cost for the area wins.
    /// <remarks>Costs for their area are compared crosswise, in 128 bits, so that nothing is
    /// rounded.</remarks>
    /// <param name="sheet">A sheet.</param>
    /// <param name="takesAll">Whether all copies that are left fit on it.</param>
    /// <param name="area">Area laid on it.</param>
    /// <param name="other">The best sheet so far.</param>
    /// <param name="otherTakesAll">Whether all fit on that.</param>
    /// <param name="otherArea">Area laid on that.</param>
    private bool Better(int sheet, bool takesAll, long area, int other, bool otherTakesAll, long otherArea)
    {
        var (cost, otherCost) = (_problem.Sheets[sheet].Cost, _problem.Sheets[other].Cost);
        return takesAll && otherTakesAll ? cost < otherCost : (Int128)cost * otherArea < (Int128)otherCost * area;
    }

    /// <summary>The area of some copies, in square grid units.</summary>
    private long Area(ReadOnlySpan<int> copies)
    {
        long area = 0;
        foreach (int copy in copies)
        {
            area += _set.Across[_set.KindOf[copy]] * _set.Along[_set.KindOf[copy]];
        }

        return area;
    }
}
