using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>What the free part of a box can still hold of the copies that are left, row by row and column by column, in area and in
/// weight. No row holds more than the greatest sum of extents that fits it (Christofides and Whitlock 1977).</summary>
internal sealed class BoxRoom
{
    private readonly BoxContents _box;
    private readonly int[] _left;
    private readonly BoxSkylines _levels;
    private readonly AxisWeights _rowWeights;
    private readonly AxisWeights _columnWeights;
    private readonly BoxNeeds _needs;
    private readonly long[] _radix;
    private readonly SubsetSums _rows;
    private readonly SubsetSums _columns;
    private readonly SubsetSums _positions;

    /// <summary>Sizes everything once.</summary>
    /// <param name="box">The rectangles and the box.</param>
    /// <param name="left">Copies left of each kind, which the search changes.</param>
    /// <param name="rowWeights">Weights along the width.</param>
    /// <param name="columnWeights">Weights along the height.</param>
    public BoxRoom(BoxContents box, int[] left, AxisWeights rowWeights, AxisWeights columnWeights)
    {
        (_box, _left, _rowWeights, _columnWeights) = (box, left, rowWeights, columnWeights);
        _needs = new BoxNeeds(box, rowWeights, columnWeights);
        long states = 1;
        _radix = new long[left.Length];
        for (var kind = 0; kind < left.Length; kind++)
        {
            (_radix[kind], states) = (states, Math.Min(states * (left[kind] + 1), int.MaxValue));
        }

        _rows = new SubsetSums(box.Width, states);
        _columns = new SubsetSums(box.Height, states);
        _positions = new SubsetSums(box.Width, 1);
        Tally();
        _positions.Recall(0);
        Tally(_positions, box.Across, box.Along);
        (Width, Height) = (_rows.Greatest(box.Width), _columns.Greatest(box.Height));
        _levels = new BoxSkylines(left.Sum() + 3, 1, Width, Height);
    }

    /// <summary>The width that rows can use.</summary>
    public int Width { get; }

    /// <summary>The height that columns can use.</summary>
    public int Height { get; }

    /// <summary>Whether a left edge can lie there in a layout that is pushed left as far as it goes.</summary>
    public bool IsPosition(int x) => _positions.Holds(x);

    /// <summary>Turns to the sums of the copies that are left.</summary>
    public void Tally()
    {
        long state = 0;
        for (var kind = 0; kind < _left.Length; kind++)
        {
            Debug.Assert(_left[kind] >= 0 && _left[kind] <= _box.Count[kind], "More copies are laid than there are.");
            state += _left[kind] * _radix[kind];
        }

        if (!_rows.Recall(state))
        {
            Tally(_rows, _box.Across, _box.Along);
        }

        if (!_columns.Recall(state))
        {
            Tally(_columns, _box.Along, _box.Across);
        }
    }

    /// <summary>Closes what nothing that is left can use, and takes it from the slack: of each column, what sums of extents do not reach
    /// from above, since all that is left could be pushed up; and gaps too narrow or too low for any. Returns the number of
    /// segments.</summary>
    public int Settle(BoxSkylines skylines, int at, int segments, ref long slack)
    {
        int[] x = skylines.X;
        int[] y = skylines.Y;
        for (var segment = 0; segment < segments; segment++)
        {
            int raised = Height - _columns.Greatest(Height - y[at + segment]);
            slack -= (long)(x[at + segment + 1] - x[at + segment]) * (raised - y[at + segment]);
            y[at + segment] = raised;
        }

        segments = skylines.Join(at, segments);
        while (slack >= 0)
        {
            int gap = skylines.Lowest(at, segments);
            int floor = y[at + gap];
            int extent = x[at + gap + 1] - x[at + gap];
            if (floor >= Height || AnyFits(extent, Height - floor))
            {
                break;
            }

            int wall = Math.Min(skylines.LeftWall(at, gap), skylines.RightWall(at, gap, segments));
            slack -= (long)extent * (wall - floor);
            y[at + gap] = wall;
            segments = skylines.Join(at, segments);
        }

        return segments;
    }

    private bool AnyFits(int extent, int room)
    {
        int[] across = _box.Across;
        int[] along = _box.Along;
        for (var kind = 0; kind < _left.Length; kind++)
        {
            if (
                _left[kind] > 0
                && ((across[kind] <= extent && along[kind] <= room) || (_box.Turns[kind] && along[kind] <= extent && across[kind] <= room))
            )
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether the free rows or the free columns hold less than what is left to lay, in area or in weight.</summary>
    public bool IsTooSmall(BoxSkylines skylines, int at, int segments)
    {
        var need = _needs.Of(_left);
        int[] x = _levels.X;
        int[] y = _levels.Y;
        long columnArea = 0;
        long columnRoom = 0;
        for (var segment = 0; segment < segments; segment++)
        {
            (x[segment], y[segment]) = (skylines.X[at + segment], skylines.Y[at + segment]);
            int extent = skylines.X[at + segment + 1] - x[segment];
            int room = Height - y[segment];
            columnArea += (long)extent * _columns.Greatest(room);
            columnRoom += extent * _columnWeights.Best[room];
        }

        if (columnArea < need.Area || columnRoom < need.Columns)
        {
            return true;
        }

        // Fills the valleys from the lowest up: a level stretch of the skyline is a run of equal rows until it meets its lower wall.
        x[segments] = Width;
        long rowArea = 0;
        long rowRoom = 0;
        for (int low = _levels.Lowest(0, segments); y[low] < Height; low = _levels.Lowest(0, segments))
        {
            int extent = x[low + 1] - x[low];
            int wall = Math.Min(_levels.LeftWall(0, low), _levels.RightWall(0, low, segments));
            int rows = wall - y[low];
            rowArea += (long)rows * _rows.Greatest(extent);
            rowRoom += rows * _rowWeights.Best[extent];
            y[low] = wall;
            segments = _levels.Join(0, segments);
        }

        return rowArea < need.Area || rowRoom < need.Rows || _needs.Together(rowRoom, columnRoom) < need.Both;
    }

    private void Tally(SubsetSums sums, int[] extent, int[] turned)
    {
        for (var kind = 0; kind < _left.Length; kind++)
        {
            for (int copy = _left[kind]; copy > 0; copy--)
            {
                sums.Add(extent[kind], _box.Turns[kind] ? turned[kind] : extent[kind]);
            }
        }
    }
}
