using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Placing;

/// <summary>Lays the copies one after the other, each as low as it will go, then as far left: the lowest free place on
/// columns where the copy lies beside another or at an edge of the strip.</summary>
/// <remarks>Bottom-left-fill of Baker, Coffman and Rivest (1980), with holes filled (Burke, Hellier,
/// Kendall and Whitwell 2006). A copy that is not laid yet is at infinity, where it forbids
/// nothing.</remarks>
internal sealed class BottomLeftFill
{
    // Steps of listing and sorting the columns of a turn, for each copy, as measured.
    private const int StepsToColumns = 6;

    private readonly Copies _copies;
    private readonly Arrangement _arrangement;
    private readonly LineSearch _lines;
    private readonly StepBudget _budget;
    private readonly FillColumns _columns;

    /// <summary>Sizes everything once.</summary>
    /// <param name="copies">The copies and flaws.</param>
    /// <param name="arrangement">Takes the places.</param>
    /// <param name="budget">Pays for the lines that are looked at.</param>
    public BottomLeftFill(Copies copies, Arrangement arrangement, StepBudget budget)
    {
        (_copies, _arrangement, _budget) = (copies, arrangement, budget);
        _columns = new FillColumns(copies, arrangement);
        _lines = new LineSearch(copies, arrangement, new double[arrangement.All * arrangement.All], budget);
    }

    /// <summary>Lays all copies in the given order.</summary>
    /// <param name="order">Which copy comes when.</param>
    /// <param name="limit">Where each copy must end, grid units.</param>
    /// <param name="until">The steps after which it stops, of all that are spent.</param>
    /// <returns>Whether every copy found a place.</returns>
    public bool Run(ReadOnlySpan<int> order, double limit, long until)
    {
        foreach (var copy in order)
        {
            (_arrangement.X[copy], _arrangement.Y[copy]) = (double.PositiveInfinity, double.PositiveInfinity);
        }

        foreach (var copy in order)
        {
            if (_budget.Spent >= until || !(_copies.Aligned[copy] is { } phase ? LayOnLattice(copy, phase, limit) : Lay(copy, limit)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The lowest free place of any turn, then the leftmost; whether there is one.</summary>
    /// <param name="copy">A copy that may lie anywhere.</param>
    /// <param name="limit">Where it must end, grid units.</param>
    private bool Lay(int copy, double limit)
    {
        var (bestTurn, bestX, bestY, bestTop) = (-1, 0.0, 0.0, double.PositiveInfinity);
        var turns = _copies.TurnsOf(copy);
        for (var turn = 0; turn < turns.Length; turn++)
        {
            var shape = turns[turn].Shape;
            var roomX = _copies.Width - _copies.Across[shape];
            _budget.Spend(StepsToColumns * _arrangement.All);
            foreach (var x in _columns.For(shape, roomX))
            {
                var along = _copies.Along[shape];
                var y = _lines.LowestFree(copy, shape, column: true, x, 0, Math.Min(limit, bestTop) - along);
                if (!double.IsNaN(y) && (y + along < bestTop || (y + along == bestTop && x < bestX)))
                {
                    (bestTurn, bestX, bestY, bestTop) = (turn, x, y, y + along);
                }
            }
        }

        if (bestTurn < 0)
        {
            return false;
        }

        _arrangement.Put(copy, bestTurn, bestX, bestY);
        return true;
    }

    /// <summary>The lowest free point of the copy's lattice; whether there is one by the limit.</summary>
    /// <param name="copy">A copy that is aligned.</param>
    /// <param name="phase">Its phase.</param>
    /// <param name="limit">Where it must end, grid units.</param>
    private bool LayOnLattice(int copy, Alignment phase, double limit)
    {
        var shape = _copies.TurnsOf(copy)[0].Shape;
        var (roomX, room) = (_copies.Width - _copies.Across[shape], limit - _copies.Along[shape]);
        var points = new LatticePoints(_copies.Lattice!, phase, (long)roomX);
        var (bestX, bestY) = (0.0, double.PositiveInfinity);
        for (var column = 0; column < points.Columns; column++)
        {
            for (var y = points.RiseTo(column, 0); y <= room && y < bestY && !_budget.Exhausted; )
            {
                // Where nothing repeats across, each height is a line across the strip; else each
                // column is a line along it.
                var anyX = _copies.Lattice!.Width == 0;
                var x = anyX ? _lines.LowestFree(copy, shape, column: false, y, 0, roomX) : points.X(column);
                var free = anyX ? y : _lines.LowestFree(copy, shape, column: true, x, y, room);
                if (free == y && !double.IsNaN(x))
                {
                    (bestX, bestY) = (x, y);
                }

                y = double.IsNaN(free) ? double.PositiveInfinity : points.RiseTo(column, anyX ? y + 1 : free);
            }
        }

        if (bestY > room)
        {
            return false;
        }

        _arrangement.Put(copy, 0, bestX, bestY);
        return true;
    }
}
