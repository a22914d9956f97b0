using System.Diagnostics;
using CushionService.Nesting.Rectangles.Proofs;

namespace CushionService.Nesting.Rectangles.PerfectBoxes;

/// <summary>The area that the copies left can no longer cover. A row or column of a free stretch is filled at most to the greatest sum of
/// extents that fits it (Christofides and Whitlock 1977); what is beyond is lost.</summary>
internal sealed class BoxLosses
{
    private readonly BoxContents _box;
    private readonly int[] _left;
    private readonly SubsetSums _rows;
    private readonly SubsetSums _columns;
    private readonly BoxSkylines _levels;

    /// <param name="box">The rectangles and the box.</param>
    /// <param name="left">Copies left of each kind, which the search changes.</param>
    public BoxLosses(BoxContents box, int[] left)
    {
        (_box, _left) = (box, left);
        (_rows, _columns) = (new SubsetSums(box.Width, 1), new SubsetSums(box.Height, 1));
        _levels = new BoxSkylines(left.Sum() + 3, 1, box.Width, box.Height);
    }

    /// <summary>Forms the sums of the copies that are left; returns the number of words that were written.</summary>
    public long Tally()
    {
        _rows.Recall(0);
        _columns.Recall(0);
        long copies = 0;
        for (var kind = 0; kind < _left.Length; kind++)
        {
            var (across, along) = (_box.Across[kind], _box.Along[kind]);
            bool turns = _box.Turns[kind];
            copies += _left[kind];
            for (int copy = _left[kind]; copy > 0; copy--)
            {
                _rows.Add(across, turns ? along : across);
                _columns.Add(along, turns ? across : along);
            }
        }

        return copies * (_box.Width + _box.Height + 128) / 64;
    }

    /// <summary>Width of a stretch that rows cannot fill.</summary>
    /// <param name="extent">In units of the box, from 0 to its width.</param>
    public int LostAcross(int extent) => extent - _rows.Greatest(extent);

    /// <summary>Height of a stretch that columns cannot fill.</summary>
    /// <param name="room">In units of the box, from 0 to its height.</param>
    public int LostAlong(int room) => room - _columns.Greatest(room);

    /// <summary>Raises each segment to where the columns can begin, as if what comes were pushed up; returns the area lost.</summary>
    /// <param name="skylines">Holds the skyline, which is changed.</param>
    /// <param name="at">Where it begins.</param>
    /// <param name="segments">Its segments; fewer afterwards where neighbours became level.</param>
    public long RaiseColumns(BoxSkylines skylines, int at, ref int segments)
    {
        long lost = 0;
        for (var segment = 0; segment < segments; segment++)
        {
            int rise = LostAlong(_box.Height - skylines.Y[at + segment]);
            lost += (long)rise * (skylines.X[at + segment + 1] - skylines.X[at + segment]);
            skylines.Y[at + segment] += rise;
        }

        segments = lost > 0 ? skylines.Join(at, segments) : segments;
        return lost;
    }

    /// <summary>Whether the rows lose no more than the slack. Valleys are filled from the lowest up: each level stretch is a run of equal
    /// rows until it meets its lower wall.</summary>
    /// <param name="skylines">Holds the skyline; it is copied, not changed.</param>
    /// <param name="at">Where it begins.</param>
    /// <param name="segments">Its segments.</param>
    /// <param name="slack">Area that may be lost.</param>
    public bool RowsAreAffordable(BoxSkylines skylines, int at, int segments, long slack)
    {
        Array.Copy(skylines.X, at, _levels.X, 0, segments + 1);
        Array.Copy(skylines.Y, at, _levels.Y, 0, segments);
        for (int low = _levels.Lowest(0, segments); _levels.Y[low] < _box.Height; low = _levels.Lowest(0, segments))
        {
            int wall = Math.Min(_levels.LeftWall(0, low), _levels.RightWall(0, low, segments));
            slack -= (long)(wall - _levels.Y[low]) * LostAcross(_levels.X[low + 1] - _levels.X[low]);
            if (slack < 0)
            {
                return false;
            }

            Debug.Assert(wall > _levels.Y[low], "A valley has no walls.");
            _levels.Y[low] = wall;
            segments = _levels.Join(0, segments);
        }

        return true;
    }
}
