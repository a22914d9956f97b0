using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.PerfectBoxes;

/// <summary>Restarts of the search for a box that is full or nearly so, along the box and across it in turn. Where a search
/// ends is much a matter of its first choices, so that many short runs and a few long ones find more than one run does: their lengths
/// follow Luby's sequence (Luby, Sinclair and Zuckerman 1993). What failed once is remembered.</summary>
internal sealed class PerfectBoxRestarts
{
    // Shortest run; runs of half or twice as many did as well.
    private const long UnitNodes = 500;

    // 131 072 states, a megabyte for each direction.
    private const int FailedLog = 17;

    // Above this share of the box too much can be lost for wrong steps to show early.
    private const double MostSlack = 0.002;
    private readonly BoxGrid _grid;
    private readonly StepBudget _budget;

    // One search along the box and one across it, for the length that was asked for last.
    private PerfectBox? _upright;
    private PerfectBox? _sideways;
    private Xorshift _random = new(1);
    private long _length;
    private int _runs;

    /// <summary>Restarts for an order.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="budget">Pays for the steps.</param>
    public PerfectBoxRestarts(RectangleSet set, StepBudget budget)
    {
        (_grid, _budget) = (new BoxGrid(set), budget);
        Layout = new RectangleLayout(set);
    }

    /// <summary>The layout, after one was found.</summary>
    public RectangleLayout Layout { get; }

    /// <summary>Whether a box of a length is so full that this search is worth its steps.</summary>
    /// <param name="length">In grid units.</param>
    public bool IsWorthwhile(long length) =>
        _grid.IsFine
        && _grid.Height(length) is not null
        && _grid.Set.Width * (double)length - _grid.Set.Area is var slack
        && slack >= 0
        && slack <= MostSlack * _grid.Set.Width * length;

    /// <summary>Looks for a layout of a length for about as many steps as are given.</summary>
    /// <returns>Whether one was found.</returns>
    /// <param name="length">In grid units; worthwhile.</param>
    /// <param name="steps">Steps to spend; the last run may take some more.</param>
    public bool Run(long length, long steps)
    {
        if (_length != length)
        {
            int height = _grid.Height(length)!.Value;
            var box = new BoxContents(_grid.Across, _grid.Along, _grid.Set.Turns, _grid.Set.Count, _grid.Width, height);
            (_upright, _sideways) = (new PerfectBox(box, FailedLog, _budget), new PerfectBox(box.Sideways, FailedLog, _budget));
            (_length, _runs) = (length, 0);
        }

        for (long stop = _budget.Spent + steps; _budget.Spent < stop; _runs++)
        {
            bool sideways = (_runs & 1) == 1;
            var search = sideways ? _sideways! : _upright!;
            long nodes = UnitNodes * LubySequence.At(_runs / 2 + 1);
            var outcome = search.Run(nodes, _runs < 2 ? 0 : 1, ref _random);
            if (outcome == BoxOutcome.Found)
            {
                search.Laid.Read(_grid, sideways, Layout);
                return true;
            }

            // Nothing is left to try in this direction, so that the other one would hardly find more.
            if (outcome == BoxOutcome.Impossible)
            {
                break;
            }
        }

        return false;
    }
}
