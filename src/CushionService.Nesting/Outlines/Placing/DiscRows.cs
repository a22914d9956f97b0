namespace CushionService.Nesting.Outlines.Placing;

/// <summary>Lays equal discs in rows across the strip, each as low upon the last as its offset allows: the shortest stack of rows,
/// found by dynamic programming over the number of discs and the uppermost row. Rows that alternate make the square and
/// the hexagonal lattice, spread to fill the width, along or across the strip; stacks may change from one to another.</summary>
/// <remarks>Discs are polygons, so their no-fit polygon says how low a row may lie. Rows are at least half a disc apart; rows two apart
/// are clear then. Denser rows would gain nothing, since a gap wide enough for them holds another disc.</remarks>
internal sealed class DiscRows
{
    // An outline counts as a disc when its extents, and its area from the ellipse of these extents, differ by no more than this share.
    private const double Roundness = 0.02;

    // The ways to fill a row grow with the width; so small discs are left to the other starts.
    private const int MostDiscsAcross = 40;

    private readonly Copies _copies;

    // The rows that may be used, and how far above one another two of them must lie.
    private readonly List<DiscRow> _rows;
    private double[,] _pitch = new double[0, 0];

    /// <param name="copies">Equal discs.</param>
    public DiscRows(Copies copies)
    {
        _copies = copies;
        var shape = copies.TurnsOf(0)[0].Shape;
        _rows = DiscRow.Across(copies.Width - copies.Across[shape], copies.Across[shape], copies.Count);
    }

    /// <summary>What <see cref="Run"/> spends: a quarter of the pairs of discs and of the ways to lay one row upon another.</summary>
    public long Steps
    {
        get
        {
            long discs = _rows.Sum(row => row.Lefts.Length);
            return (discs * discs + (long)_copies.Count * _rows.Count * _rows.Count) / 4;
        }
    }

    /// <summary>Whether the copies are equal discs that may lie anywhere.</summary>
    /// <param name="copies">The copies.</param>
    public static bool CanLay(Copies copies)
    {
        var shape = copies.TurnsOf(0)[0].Shape;
        for (var copy = 0; copy < copies.Count; copy++)
        {
            if (copies.TurnsOf(copy)[0].Shape != shape || copies.Aligned[copy] is not null)
            {
                return false;
            }
        }

        var (across, along) = (copies.Across[shape], copies.Along[shape]);
        var ellipse = Math.PI / 4 * across * along;
        return copies.Flaws.Length == 0
            && copies.Width <= MostDiscsAcross * across
            && copies.Book[shape].IsConvex
            && Math.Abs(across - along) <= Roundness * across
            && Math.Abs(copies.Areas[0] - ellipse) <= Roundness * ellipse;
    }

    /// <summary>Lays all copies, in their order from the lowest row up.</summary>
    /// <param name="arrangement">Takes the places; each is whole and on the strip.</param>
    /// <remarks>Dynamic programming: the least height at which a row of each sort can lie as the
    /// uppermost of a number of discs.</remarks>
    public void Run(Arrangement arrangement)
    {
        var shape = _copies.TurnsOf(0)[0].Shape;
        _pitch = DiscPitches.Of(_rows, _copies.Book.Pair(shape, shape).Columns, Math.Ceiling(_copies.Along[shape] / 2));
        var most = _copies.Count + _rows.Max(row => row.Lefts.Length);
        var (heights, under) = (new double[most, _rows.Count], new int[most, _rows.Count]);
        var (discs, top) = (0, 0);
        for (var laid = 1; laid < most; laid++)
        {
            for (var row = 0; row < _rows.Count; row++)
            {
                (heights[laid, row], under[laid, row]) = Lowest(heights, laid, row);
                if (laid >= _copies.Count && (discs == 0 || heights[laid, row] < heights[discs, top]))
                {
                    (discs, top) = (laid, row);
                }
            }
        }

        // The uppermost row may hold more discs than are left to lay.
        for (var row = top; discs > 0; (discs, row) = (discs - _rows[row].Lefts.Length, under[discs, row]))
        {
            var first = discs - _rows[row].Lefts.Length;
            for (var copy = first; copy < Math.Min(discs, _copies.Count); copy++)
            {
                arrangement.Put(copy, 0, _rows[row].Lefts[copy - first], heights[discs, row]);
            }
        }
    }

    /// <summary>How low a row may lie as the uppermost of the discs laid, and upon which row.</summary>
    /// <param name="heights">By discs laid and uppermost row, for fewer discs.</param>
    /// <param name="laid">Number of discs, those of the row included.</param>
    /// <param name="row">The row.</param>
    /// <returns>Infinite when that many discs cannot end with the row.</returns>
    private (double Height, int Under) Lowest(double[,] heights, int laid, int row)
    {
        var below = laid - _rows[row].Lefts.Length;
        var (height, under) = (below == 0 ? 0 : double.PositiveInfinity, -1);
        for (var lower = 0; lower < _rows.Count && below > 0; lower++)
        {
            var here = heights[below, lower] + _pitch[lower, row];
            (height, under) = here < height ? (here, lower) : (height, under);
        }

        return (height, under);
    }
}
