using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The skylines of a depth-first search, one for each depth, each a row of two flat arrays: left ends and heights of
/// level segments. Neighbours differ in height; the end of the last segment is the box's right wall.</summary>
/// <param name="stride">Distance from one row to the next: more than any skyline has segments.</param>
/// <param name="rows">Number of rows.</param>
/// <param name="width">Width of the box.</param>
/// <param name="height">Height of the box.</param>
internal sealed class BoxSkylines(int stride, int rows, int width, int height)
{
    /// <summary>Left ends of the segments.</summary>
    public int[] X { get; } = new int[stride * rows];

    /// <summary>Heights of the segments.</summary>
    public int[] Y { get; } = new int[stride * rows];

    /// <summary>Where a depth's row begins.</summary>
    /// <param name="depth">From 0, below the number of rows.</param>
    public int Row(int depth) => depth * stride;

    /// <summary>Makes the first row the floor of an empty box.</summary>
    public void Clear() => (X[0], X[1], Y[0]) = (0, width, 0);

    /// <summary>Index in its row of the lowest segment, the leftmost of equals.</summary>
    /// <param name="at">Where the row begins.</param>
    /// <param name="segments">Its segments, 1 at least.</param>
    public int Lowest(int at, int segments)
    {
        var lowest = 0;
        for (var segment = 1; segment < segments; segment++)
        {
            if (Y[at + segment] < Y[at + lowest])
            {
                lowest = segment;
            }
        }

        return lowest;
    }

    /// <summary>Height to the left of a segment.</summary>
    /// <remarks>The box's own height at its left wall: nothing rises above that.</remarks>
    public int LeftWall(int at, int segment) => segment > 0 ? Y[at + segment - 1] : height;

    /// <summary>Height to the right of a segment.</summary>
    public int RightWall(int at, int segment, int segments) => segment < segments - 1 ? Y[at + segment + 1] : height;

    /// <summary>Writes the skyline after laying a rectangle into the next row; what lies left of it, under its offset, is lost up to
    /// the left wall. Returns the number of segments.</summary>
    /// <param name="at">Where the row begins.</param>
    /// <param name="segments">Its segments.</param>
    /// <param name="gap">Index of the gap.</param>
    /// <param name="offset">Distance from the gap's left end, at least 0.</param>
    /// <param name="across">Extent of the rectangle across the gap.</param>
    /// <param name="along">Extent along the box.</param>
    public int Lay(int at, int segments, int gap, int offset, int across, int along)
    {
        int to = at + stride;
        int count = Begin(at, gap, to);
        int x = X[at + gap];
        int floor = Y[at + gap];
        Debug.Assert(offset >= 0 && x + offset + across <= X[at + gap + 1], "A rectangle is wider than its gap.");
        Debug.Assert(floor + along <= height, "A rectangle sticks out of the box.");
        if (offset > 0)
        {
            count = Append(to, count, x, LeftWall(at, gap));
        }

        count = Append(to, count, x + offset, floor + along);
        if (x + offset + across < X[at + gap + 1])
        {
            count = Append(to, count, x + offset + across, floor);
        }

        return Rest(at, segments, gap, to, count);
    }

    /// <summary>Writes the skyline after laying a rectangle at one end of a gap into the next row. Returns the number of
    /// segments.</summary>
    /// <param name="at">Where the row begins.</param>
    /// <param name="segments">Its segments.</param>
    /// <param name="gap">Index of the gap.</param>
    /// <param name="across">Extent of the rectangle across the gap.</param>
    /// <param name="along">Extent along the box.</param>
    /// <param name="atRight">Whether it lies at the gap's right end.</param>
    public int Lay(int at, int segments, int gap, int across, int along, bool atRight)
    {
        if (!atRight)
        {
            return Lay(at, segments, gap, 0, across, along);
        }

        int to = at + stride;
        int count = Begin(at, gap, to);
        int right = X[at + gap + 1] - across;
        count = right > X[at + gap] ? Append(to, count, X[at + gap], Y[at + gap]) : count;
        count = Append(to, count, right, Y[at + gap] + along);
        return Rest(at, segments, gap, to, count);
    }

    /// <summary>Writes the skyline after closing a gap up to a level into the next row. Returns the number of segments.</summary>
    /// <param name="at">Where the row begins.</param>
    /// <param name="segments">Its segments.</param>
    /// <param name="gap">Index of the gap.</param>
    /// <param name="level">The new height of its floor.</param>
    public int Raise(int at, int segments, int gap, int level)
    {
        Debug.Assert(level > Y[at + gap] && level <= height, "A gap is raised downwards, or out of the box.");
        int to = at + stride;
        int count = Append(to, Begin(at, gap, to), X[at + gap], level);
        return Rest(at, segments, gap, to, count);
    }

    /// <summary>Joins neighbours of one height, in place. Returns the number of segments.</summary>
    public int Join(int at, int segments)
    {
        var count = 1;
        for (var segment = 1; segment < segments; segment++)
        {
            if (Y[at + segment] != Y[at + count - 1])
            {
                (X[at + count], Y[at + count]) = (X[at + segment], Y[at + segment]);
                count++;
            }
        }

        X[at + count] = width;
        Debug.Assert(IsSkyline(at, count), "The skyline is not sorted, or two neighbours are level.");
        return count;
    }

    /// <summary>Copies what lies to the left of a gap into the next row.</summary>
    private int Begin(int at, int gap, int to)
    {
        int count = to;
        for (var segment = 0; segment < gap; segment++)
        {
            count = Append(to, count, X[at + segment], Y[at + segment]);
        }

        return count;
    }

    /// <summary>Copies what lies to the right of a gap, and ends the row with the box's
    /// width.</summary>
    private int Rest(int at, int segments, int gap, int to, int count)
    {
        for (int segment = gap + 1; segment < segments; segment++)
        {
            count = Append(to, count, X[at + segment], Y[at + segment]);
        }

        X[count] = width;
        Debug.Assert(IsSkyline(to, count - to), "The skyline is not sorted, or two neighbours are level.");
        return count - to;
    }

    /// <summary>Adds a segment, unless it is level with the last one and so goes on with it.</summary>
    private int Append(int to, int count, int x, int y)
    {
        if (count > to && Y[count - 1] == y)
        {
            return count;
        }

        (X[count], Y[count]) = (x, y);
        return count + 1;
    }

    /// <summary>For assertions: segments ascend from wall to wall, none is level with its
    /// neighbour.</summary>
    private bool IsSkyline(int at, int segments)
    {
        for (var segment = 0; segment < segments; segment++)
        {
            bool level = segment > 0 && Y[at + segment] == Y[at + segment - 1];
            if (level || X[at + segment] >= X[at + segment + 1] || Y[at + segment] < 0 || Y[at + segment] > height)
            {
                return false;
            }
        }

        return X[at] == 0 && X[at + segments] == width;
    }
}
