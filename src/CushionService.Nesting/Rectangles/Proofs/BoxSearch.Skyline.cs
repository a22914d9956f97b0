namespace CushionService.Nesting.Rectangles.Proofs;

/// <content>The skylines of the search's depths, each a row of two flat arrays.</content>
internal sealed partial class BoxSearch
{
    private static int Lowest(int[] heights, int at, int segments)
    {
        var lowest = 0;
        for (var segment = 1; segment < segments; segment++)
        {
            if (heights[at + segment] < heights[at + lowest])
            {
                lowest = segment;
            }
        }

        return lowest;
    }

    /// <summary>Writes the skyline after laying a rectangle into the next depth's row; returns its number of segments.</summary>
    private int Lay(int at, int segments, int gap, int offset, int across, int along, int leftWall)
    {
        int to = at + _stride;
        int count = to;
        for (var segment = 0; segment < gap; segment++)
        {
            count = Append(to, count, _x[at + segment], _y[at + segment]);
        }

        int x = _x[at + gap];
        int floor = _y[at + gap];
        if (offset > 0)
        {
            count = Append(to, count, x, leftWall);
        }

        count = Append(to, count, x + offset, floor + along);
        if (x + offset + across < _x[at + gap + 1])
        {
            count = Append(to, count, x + offset + across, floor);
        }

        return Rest(at, segments, gap, to, count);
    }

    private int Raise(int at, int segments, int gap, int level)
    {
        int to = at + _stride;
        int count = to;
        for (var segment = 0; segment < gap; segment++)
        {
            count = Append(to, count, _x[at + segment], _y[at + segment]);
        }

        count = Append(to, count, _x[at + gap], level);
        return Rest(at, segments, gap, to, count);
    }

    private int Rest(int at, int segments, int gap, int to, int count)
    {
        for (int segment = gap + 1; segment < segments; segment++)
        {
            count = Append(to, count, _x[at + segment], _y[at + segment]);
        }

        _x[count] = _width;
        return count - to;
    }

    private int Append(int to, int count, int x, int y)
    {
        if (count > to && _y[count - 1] == y)
        {
            return count;
        }

        (_x[count], _y[count]) = (x, y);
        return count + 1;
    }

    /// <summary>128 bits that tell states apart: the skyline and what is left.</summary>
    private (ulong A, ulong B) Key(int at, int segments)
    {
        var a = 0x9E3779B97F4A7C15UL;
        ulong b = ~a;
        for (var segment = 0; segment < segments; segment++)
        {
            Mix(((ulong)(uint)_x[at + segment] << 32) | (uint)_y[at + segment]);
        }

        for (var kind = 0; kind < _kinds; kind++)
        {
            Mix((ulong)_left[kind] + 0x100000000UL * (ulong)(kind + 1) + (1UL << 63));
        }

        return (a, b);

        void Mix(ulong value)
        {
            a = (a ^ value) * 0xFF51AFD7ED558CCDUL;
            a ^= a >> 32;
            b = (b + value) * 0xC4CEB9FE1A85EC53UL;
            b ^= b >> 29;
        }
    }
}
