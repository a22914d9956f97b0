namespace CushionService.Nesting.Rectangles.Proofs;

/// <content>What the free part of a box can still hold, row by row and column by column.</content>
internal sealed partial class BoxSearch
{
    /// <summary>Gives up what nothing that is left can use, and takes it from the slack: of each column, what sums of extents do not reach
    /// from above, since all that is left could be pushed up (Christofides and Whitlock 1977); and gaps too narrow or too low for any.
    /// Returns the number of segments.</summary>
    private int Settle(int at, int segments, ref long slack)
    {
        for (var segment = 0; segment < segments; segment++)
        {
            int y = _height - _columns.Greatest(_height - _y[at + segment]);
            slack -= (long)(_x[at + segment + 1] - _x[at + segment]) * (y - _y[at + segment]);
            _y[at + segment] = y;
        }

        segments = Merged(at, segments);
        while (slack >= 0)
        {
            int gap = Lowest(_y, at, segments);
            int floor = _y[at + gap];
            int extent = _x[at + gap + 1] - _x[at + gap];
            if (floor >= _height || AnyFits(extent, _height - floor))
            {
                break;
            }

            int wall = Math.Min(gap > 0 ? _y[at + gap - 1] : _height, gap < segments - 1 ? _y[at + gap + 1] : _height);
            slack -= (long)extent * (wall - floor);
            _y[at + gap] = wall;
            segments = Merged(at, segments);
        }

        return segments;
    }

    private bool AnyFits(int extent, int room)
    {
        for (var kind = 0; kind < _kinds; kind++)
        {
            if (
                _left[kind] > 0
                && ((_across[kind] <= extent && _along[kind] <= room) || (_turns[kind] && _along[kind] <= extent && _across[kind] <= room))
            )
            {
                return true;
            }
        }

        return false;
    }

    private int Merged(int at, int segments)
    {
        var count = 1;
        for (var segment = 1; segment < segments; segment++)
        {
            if (_y[at + segment] != _y[at + count - 1])
            {
                (_x[at + count], _y[at + count]) = (_x[at + segment], _y[at + segment]);
                count++;
            }
        }

        _x[at + count] = _width;
        return count;
    }

    /// <summary>Whether the free rows or the free columns hold less than what is left to lay, in area or in weight.</summary>
    private bool TooMuchIsLost(int at, int segments)
    {
        long area = 0;
        long rowNeed = 0;
        long bothNeed = 0;
        long columnNeed = 0;
        for (var kind = 0; kind < _kinds; kind++)
        {
            area += (long)_left[kind] * _across[kind] * _along[kind];
            rowNeed += _left[kind] * _rowShare[kind];
            columnNeed += _left[kind] * _columnShare[kind];
            bothNeed += _left[kind] * _bothShare[kind];
        }

        long columnArea = 0;
        long columnRoom = 0;
        for (var segment = 0; segment < segments; segment++)
        {
            int extent = _x[at + segment + 1] - _x[at + segment];
            int room = _height - _y[at + segment];
            columnArea += (long)extent * _columns.Greatest(room);
            columnRoom += extent * _columnWeights.Best[room];
            (_levelX[segment], _levelY[segment]) = (_x[at + segment], _y[at + segment]);
        }

        if (columnArea < area || columnRoom < columnNeed)
        {
            return true;
        }

        // Fills the valleys from the lowest up: a level stretch of the skyline is a run of equal rows until it meets its lower wall.
        _levelX[segments] = _width;
        long rowArea = 0;
        long rowRoom = 0;
        for (int low = Lowest(_levelY, 0, segments); _levelY[low] < _height; low = Lowest(_levelY, 0, segments))
        {
            int extent = _levelX[low + 1] - _levelX[low];
            int wall = Math.Min(low > 0 ? _levelY[low - 1] : _height, low < segments - 1 ? _levelY[low + 1] : _height);
            int rows = wall - _levelY[low];
            rowArea += (long)rows * _rows.Greatest(extent);
            rowRoom += rows * _rowWeights.Best[extent];
            _levelY[low] = wall;
            segments = Joined(segments);
        }

        return rowArea < area || rowRoom < rowNeed || rowRoom * _rowFactor + columnRoom * _columnFactor < bothNeed;
    }

    private int Joined(int segments)
    {
        var count = 1;
        for (var segment = 1; segment < segments; segment++)
        {
            if (_levelY[segment] != _levelY[count - 1])
            {
                (_levelX[count], _levelY[count]) = (_levelX[segment], _levelY[segment]);
                count++;
            }
        }

        _levelX[count] = _width;
        return count;
    }

    private void Tally()
    {
        long state = 0;
        for (var kind = 0; kind < _kinds; kind++)
        {
            state += _left[kind] * _radix[kind];
        }

        if (!_rows.Recall(state))
        {
            Tally(_rows, _across, _along);
        }

        if (!_columns.Recall(state))
        {
            Tally(_columns, _along, _across);
        }
    }

    private void Tally(SubsetSums sums, int[] extent, int[] turned)
    {
        for (var kind = 0; kind < _kinds; kind++)
        {
            for (int copy = _left[kind]; copy > 0; copy--)
            {
                sums.Add(extent[kind], _turns[kind] ? turned[kind] : extent[kind]);
            }
        }
    }
}
