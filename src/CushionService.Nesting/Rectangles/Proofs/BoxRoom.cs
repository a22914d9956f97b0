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
    private readonly LeftSums _sums;

    /// <summary>Sizes everything once.</summary>
    /// <param name="box">The rectangles and the box.</param>
    /// <param name="left">Copies left of each kind, which the search changes.</param>
    /// <param name="rowWeights">Weights along the width.</param>
    /// <param name="columnWeights">Weights along the height.</param>
    public BoxRoom(BoxContents box, int[] left, AxisWeights rowWeights, AxisWeights columnWeights)
    {
        (_box, _left, _rowWeights, _columnWeights) = (box, left, rowWeights, columnWeights);
        _needs = new BoxNeeds(box, rowWeights, columnWeights);
        _sums = new LeftSums(box, left);
        (Width, Height) = (_sums.Across(box.Width), _sums.Along(box.Height));
        _levels = new BoxSkylines(left.Sum() + 3, 1, Width, Height);
    }

    /// <summary>The width that rows can use.</summary>
    public int Width { get; }

    /// <summary>The height that columns can use.</summary>
    public int Height { get; }

    /// <summary>Whether a left edge can lie there in a layout that is pushed left as far as it goes.</summary>
    /// <param name="x">In units of the box.</param>
    public bool IsPosition(int x) => _sums.IsPosition(x);

    /// <summary>Turns to the sums of the copies that are left; the steps that this took.</summary>
    public int Tally() => _sums.Tally();

    /// <summary>Closes what nothing that is left can use, and takes it from the slack: of each column, what sums of extents do not reach
    /// from above, since all that is left could be pushed up; and gaps too narrow or too low for any. Returns the number of
    /// segments.</summary>
    /// <param name="skylines">Holds the skyline, which is changed.</param>
    /// <param name="at">Where it begins.</param>
    /// <param name="segments">Its segments.</param>
    /// <param name="slack">Area that may be lost; below 0 afterwards when it does not suffice.</param>
    public int Settle(BoxSkylines skylines, int at, int segments, ref long slack)
    {
        int[] x = skylines.X;
        int[] y = skylines.Y;
        for (var segment = 0; segment < segments; segment++)
        {
            int raised = Height - _sums.Along(Height - y[at + segment]);
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

    /// <summary>Whether the free rows or the free columns hold less than what is left to lay, in area or in weight.</summary>
    /// <param name="skylines">Holds the skyline; it is copied, not changed.</param>
    /// <param name="at">Where it begins.</param>
    /// <param name="segments">Its segments.</param>
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
            columnArea += (long)extent * _sums.Along(room);
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
            rowArea += (long)rows * _sums.Across(extent);
            rowRoom += rows * _rowWeights.Best[extent];
            y[low] = wall;
            segments = _levels.Join(0, segments);
        }

        return rowArea < need.Area || rowRoom < need.Rows || _needs.Together(rowRoom, columnRoom) < need.Both;
    }

    /// <summary>Whether a copy that is left fits a stretch of the floor, in any turn that it may
    /// take.</summary>
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
}
