using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>The upper contour of what has been laid: level segments from left to right in a linked list over flat arrays
/// that are sized once. Nothing is ever laid below it (Burke, Kendall and Whitwell 2004).</summary>
/// <remarks>A segment is named by the number of its node. Two nodes are the walls, higher than
/// anything; the others are taken from a list of free ones and given back when neighbours become
/// level.</remarks>
internal sealed class Skyline
{
    /// <summary>Height of the two walls.</summary>
    /// <remarks>A quarter of the range, so that sums of two heights cannot overflow.</remarks>
    public const long Wall = long.MaxValue / 4;

    private const int Left = 0;
    private const int Right = 1;
    private readonly long _width;
    private readonly long[] _x;
    private readonly long[] _y;
    private readonly int[] _next;
    private readonly int[] _before;
    private readonly int[] _free;
    private int _freeCount;
    private Skyline? _marked;

    /// <summary>A level strip that takes up to <paramref name="copies"/> rectangles.</summary>
    /// <param name="width">Grid units, above 0.</param>
    /// <param name="copies">The most rectangles that are laid on it at once.</param>
    public Skyline(long width, int copies)
    {
        _width = width;
        // Each rectangle adds at most one segment; beside them there are two walls and the first segment.
        int nodes = copies + 3;
        _x = new long[nodes];
        _y = new long[nodes];
        _next = new int[nodes];
        _before = new int[nodes];
        _free = new int[nodes];
        Clear();
    }

    /// <summary>Goes back to the start: the strip level at 0, or as it was when it was marked.</summary>
    public void Reset()
    {
        if (_marked is not { } marked)
        {
            Clear();
            return;
        }

        marked._x.CopyTo(_x, 0);
        marked._y.CopyTo(_y, 0);
        marked._next.CopyTo(_next, 0);
        marked._before.CopyTo(_before, 0);
        marked._free.CopyTo(_free, 0);
        _freeCount = marked._freeCount;
    }

    /// <summary>Takes over another skyline of the same width as the start.</summary>
    /// <param name="other">Of the same width, with no more segments than this one has room for.</param>
    public void StartFrom(Skyline other)
    {
        _marked = new Skyline(_width, _x.Length - 3);
        int last = 2;
        _marked._y[last] = other._y[other._next[Left]];
        for (int node = other._next[other._next[Left]]; node != Right; node = other._next[node])
        {
            int fresh = _marked._free[--_marked._freeCount];
            (_marked._x[fresh], _marked._y[fresh]) = (other._x[node], other._y[node]);
            (_marked._before[fresh], _marked._next[fresh], _marked._next[last], _marked._before[Right]) = (last, Right, fresh, fresh);
            last = fresh;
        }

        Reset();
    }

    /// <summary>The greatest height.</summary>
    /// <remarks>Goes through all segments; that of a level strip is 0.</remarks>
    public long Top()
    {
        long top = 0;
        for (int node = _next[Left]; node != Right; node = _next[node])
        {
            top = Math.Max(top, _y[node]);
        }

        return top;
    }

    /// <summary>The number of segments.</summary>
    /// <remarks>Counted anew each time.</remarks>
    public int Segments()
    {
        var count = 0;
        for (int node = _next[Left]; node != Right; node = _next[node])
        {
            count++;
        }

        return count;
    }

    /// <summary>A level strip: one segment between the walls.</summary>
    private void Clear()
    {
        _freeCount = 0;
        for (int node = _x.Length - 1; node > Right + 1; node--)
        {
            _free[_freeCount++] = node;
        }

        (_x[Left], _y[Left], _next[Left]) = (0, Wall, 2);
        (_x[Right], _y[Right], _before[Right]) = (_width, Wall, 2);
        (_x[2], _y[2], _next[2], _before[2]) = (0, 0, Right, Left);
    }

    /// <summary>Left end of a segment.</summary>
    /// <param name="segment">A node of the list, as <see cref="Lowest"/> gives it.</param>
    public long X(int segment) => _x[segment];

    /// <summary>Height of a segment.</summary>
    /// <param name="segment">A node of the list.</param>
    public long Y(int segment) => _y[segment];

    /// <summary>Width of a segment.</summary>
    /// <param name="segment">A node of the list.</param>
    public long Extent(int segment) => _x[_next[segment]] - _x[segment];

    /// <summary>Height of the contour to the left of a segment.</summary>
    /// <param name="segment">A node of the list.</param>
    /// <returns><see cref="Wall"/> at the edge of the strip.</returns>
    public long LeftWall(int segment) => _y[_before[segment]];

    /// <summary>Height of the contour to the right of a segment.</summary>
    /// <param name="segment">A node of the list.</param>
    /// <returns><see cref="Wall"/> at the edge of the strip.</returns>
    public long RightWall(int segment) => _y[_next[segment]];

    /// <summary>The lowest segment, the leftmost of equals.</summary>
    /// <remarks>Goes through all segments.</remarks>
    public int Lowest()
    {
        int lowest = _next[Left];
        for (int node = _next[lowest]; node != Right; node = _next[node])
        {
            if (_y[node] < _y[lowest])
            {
                lowest = node;
            }
        }

        return lowest;
    }

    /// <summary>Closes the segment: raises it to its lower neighbour. Returns the area lost.</summary>
    /// <param name="segment">A valley: both neighbours are higher.</param>
    public long Raise(int segment)
    {
        long to = Math.Min(LeftWall(segment), RightWall(segment));
        Debug.Assert(to > _y[segment] && to < Wall, "Only a valley between two walls can be closed.");
        long lost = Extent(segment) * (to - _y[segment]);
        _y[segment] = to;
        Join(segment);
        return lost;
    }

    /// <summary>Lays a rectangle on the segment, at its left or its right end. Returns its left edge.</summary>
    /// <param name="segment">Where.</param>
    /// <param name="across">Extent across, at most the segment's, grid units.</param>
    /// <param name="along">Extent along the strip.</param>
    /// <param name="atLeft">Whether at its left end.</param>
    public long Lay(int segment, long across, long along, bool atLeft)
    {
        long extent = Extent(segment);
        Debug.Assert(across > 0 && across <= extent && along > 0, "A rectangle does not fit its segment.");
        long x = atLeft ? _x[segment] : _x[segment] + extent - across;
        // The rest of the segment becomes one of its own, at the other end; the segment that was given is where the
        // rectangle lies.
        if (across < extent)
        {
            int rest = _free[--_freeCount];
            if (atLeft)
            {
                (_x[rest], _y[rest]) = (x + across, _y[segment]);
                (_before[rest], _next[rest]) = (segment, _next[segment]);
                _before[_next[segment]] = rest;
                _next[segment] = rest;
            }
            else
            {
                (_x[rest], _y[rest]) = (_x[segment], _y[segment]);
                (_before[rest], _next[rest]) = (_before[segment], segment);
                _next[_before[segment]] = rest;
                _before[segment] = rest;
                _x[segment] = x;
            }
        }

        _y[segment] += along;
        Join(segment);
        return x;
    }

    /// <summary>Joins a segment with neighbours that are level with it.</summary>
    /// <param name="segment">A segment that has just been raised.</param>
    private void Join(int segment)
    {
        int right = _next[segment];
        if (right != Right && _y[right] == _y[segment])
        {
            Drop(right);
        }

        int left = _before[segment];
        if (left != Left && _y[left] == _y[segment])
        {
            _x[segment] = _x[left];
            Drop(left);
        }

        Debug.Assert(IsSorted(), "The skyline is not sorted, or two neighbours are level.");
    }

    /// <summary>Whether the segments follow each other from wall to wall, each level with neither neighbour.</summary>
    private bool IsSorted()
    {
        long from = 0;
        for (int node = _next[Left]; node != Right; node = _next[node])
        {
            int next = _next[node];
            if (_x[node] != from || _x[next] <= from || _before[next] != node || _y[next] == _y[node])
            {
                return false;
            }

            from = _x[next];
        }

        return from == _width;
    }

    /// <summary>Gives a node back.</summary>
    private void Drop(int node)
    {
        _next[_before[node]] = _next[node];
        _before[_next[node]] = _before[node];
        _free[_freeCount++] = node;
    }
}
