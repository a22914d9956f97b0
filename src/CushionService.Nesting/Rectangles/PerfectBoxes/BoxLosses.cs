using System.Diagnostics;
using CushionService.Nesting.Rectangles.Proofs;

namespace CushionService.Nesting.Rectangles.PerfectBoxes;

/// <summary>The area that the copies left can no longer cover. A row or column of a free stretch is filled at most to the greatest sum of
/// extents that fits it (Christofides and Whitlock 1977); what is beyond is lost.</summary>
internal sealed class BoxLosses
{
    private readonly BoxContents _box;
    private readonly SumCounts _rows;
    private readonly SumCounts _columns;
    private readonly int[] _openX;
    private readonly int[] _openY;
    private int _laid;

    /// <param name="box">The rectangles and the box.</param>
    public BoxLosses(BoxContents box)
    {
        _box = box;
        _rows = new SumCounts(box.Across, Other(box.Across, box.Along), box.Count, box.Width);
        _columns = new SumCounts(box.Along, Other(box.Along, box.Across), box.Count, box.Height);
        (_openX, _openY) = (new int[box.Count.Sum() + 3], new int[box.Count.Sum() + 3]);

        int[] Other(int[] extents, int[] turned) => [.. extents.Select((extent, kind) => box.Turns[kind] ? turned[kind] : extent)];
    }

    /// <summary>How many sums <see cref="Turn"/> writes.</summary>
    public int Sums => _box.Width + _box.Height;

    /// <summary>Turns to the sums of the copies that are left.</summary>
    /// <param name="laid">How many copies are laid; the sums of one less are known.</param>
    /// <param name="kind">The kind that was laid last.</param>
    public void Turn(int laid, int kind)
    {
        _laid = laid;
        if (laid > 0)
        {
            _rows.Write(laid, kind);
            _columns.Write(laid, kind);
        }
    }

    /// <summary>Width of a stretch that rows cannot fill.</summary>
    /// <param name="extent">In units of the box, from 0 to its width.</param>
    public int LostAcross(int extent) => extent - _rows.Greatest(_laid, extent);

    /// <summary>Height of a stretch that columns cannot fill.</summary>
    /// <param name="room">In units of the box, from 0 to its height.</param>
    public int LostAlong(int room) => room - _columns.Greatest(_laid, room);

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

    /// <summary>Whether the rows lose no more than the slack. Each level stretch between higher walls is a run of equal rows until it
    /// meets the lower one; from there on it is one stretch with what lies behind that wall.</summary>
    /// <param name="skylines">Holds the skyline, which is not changed.</param>
    /// <param name="at">Where it begins.</param>
    /// <param name="segments">Its segments.</param>
    /// <param name="slack">Area that may be lost.</param>
    public bool RowsAreAffordable(BoxSkylines skylines, int at, int segments, long slack)
    {
        // Stretches that are still open to the right: each lower than the one before.
        var open = 0;
        for (var segment = 0; segment <= segments && slack >= 0; segment++)
        {
            int x = skylines.X[at + segment];
            int y = segment < segments ? skylines.Y[at + segment] : _box.Height;
            int left = x;
            while (open > 0 && _openY[open - 1] < y)
            {
                open--;
                int wall = Math.Min(y, open > 0 ? _openY[open - 1] : _box.Height);
                slack -= (long)(wall - _openY[open]) * LostAcross(x - _openX[open]);
                left = _openX[open];
                if (wall < y)
                {
                    Debug.Assert(open > 0, "A stretch ends below the top at no wall.");
                    left = _openX[open - 1];
                }
            }

            if (open == 0 || _openY[open - 1] > y)
            {
                (_openX[open], _openY[open]) = (left, y);
                open++;
            }
        }

        return slack >= 0;
    }
}
