using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>The partial layouts of one depth: of each its skyline, the copies left of each kind, and the areas lost and left, all
/// in flat arrays that are sized once.</summary>
/// <param name="states">The most states of a layer.</param>
/// <param name="copies">Copies of the order: a skyline has at most two segments more.</param>
/// <param name="kinds">Kinds of the order.</param>
/// <param name="words">Words of a set of their ways.</param>
/// <param name="sums">What the copies left add up to; null where tables would be too large.</param>
internal sealed class BeamLayer(int states, int copies, int kinds, int words, BeamSums? sums)
{
    /// <summary>How far apart the skylines of two states begin in <see cref="X"/> and <see cref="Y"/>.</summary>
    public int Stride { get; } = copies + 3;

    /// <summary>Left ends of the segments, and the box's width behind the last.</summary>
    public long[] X { get; } = new long[states * (copies + 3)];

    /// <summary>Heights of the segments.</summary>
    public long[] Y { get; } = new long[states * (copies + 3)];

    /// <summary>Number of segments of each state.</summary>
    public int[] Segments { get; } = new int[states];

    /// <summary>Of each state, the index of its lowest segment, as it was found last.</summary>
    public int[] Gap { get; } = new int[states];

    /// <summary>Copies left, by state and kind.</summary>
    public int[] Left { get; } = new int[states * kinds];

    // The ways of the kinds that are left, some words for each state.
    private readonly ulong[] _open = new ulong[states * words];

    /// <summary>A hash of the copies left of each state.</summary>
    public ulong[] LeftHash { get; } = new ulong[states];

    /// <summary>Area that can no longer be covered.</summary>
    public long[] Waste { get; } = new long[states];

    /// <summary>Area that no rows of the copies left can cover, beside the waste; 0 without sums.</summary>
    public long[] RowLoss { get; } = new long[states];

    /// <summary>Area of the copies that are left.</summary>
    public long[] Remaining { get; } = new long[states];

    /// <summary>How hard the copies left are to lay, all together.</summary>
    public double[] Hardness { get; } = new double[states];

    /// <summary>What the copies left of each state add up to; null where a run does without.</summary>
    public BeamSums? Sums { get; private set; }

    /// <summary>The one state of an empty box.</summary>
    /// <param name="all">All copies.</param>
    /// <param name="width">Width of the box as the run sees it, in the kinds' units.</param>
    /// <param name="sideways">Whether the box's axes are exchanged.</param>
    /// <param name="looksAhead">Whether the run counts what the copies left add up to.</param>
    public void Begin(BeamKinds all, long width, bool sideways, bool looksAhead)
    {
        Sums = looksAhead ? sums : null;
        (X[0], X[1], Y[0], Segments[0], Gap[0], LeftHash[0]) = (0, width, 0, 1, 0, 0);
        (Waste[0], RowLoss[0], Remaining[0], Hardness[0]) = (0, 0, all.Area, all.AllHardness);
        all.Set.Count.CopyTo(Left, 0);
        all.Ways(sideways).WriteAll(OpenOf(0));
        Sums?.Begin(sideways);
    }

    /// <summary>The ways of the kinds that are left of a state.</summary>
    public Span<ulong> OpenOf(int state) => _open.AsSpan(state * words, words);

    /// <summary>Finds the state's lowest segment, the leftmost of equals, and keeps it as its gap.</summary>
    /// <param name="state">Which one.</param>
    public int FindGap(int state)
    {
        var heights = Y.AsSpan(state * Stride, Segments[state]);
        var lowest = 0;
        for (var segment = 1; segment < heights.Length; segment++)
        {
            if (heights[segment] < heights[lowest])
            {
                lowest = segment;
            }
        }

        return Gap[state] = lowest;
    }

    /// <summary>Becomes, in one state, what another layer's state is after a rectangle was laid at one end of its gap.</summary>
    /// <param name="state">The state that is written.</param>
    /// <param name="from">The layer before.</param>
    /// <param name="parent">Its state.</param>
    /// <param name="gap">Index of the gap among the parent's segments.</param>
    /// <param name="across">Extent of the rectangle across the gap, grid units.</param>
    /// <param name="along">Extent along the box.</param>
    /// <param name="atLeft">Whether it lies at the gap's left end, else at its right.</param>
    public void Lay(int state, BeamLayer from, int parent, int gap, long across, long along, bool atLeft)
    {
        Debug.Assert(across <= from.X[parent * Stride + gap + 1] - from.X[parent * Stride + gap], "A rectangle is wider than its gap.");
        int at = parent * Stride;
        int to = state * Stride;
        int last = from.Segments[parent];
        from.X.AsSpan(at, gap).CopyTo(X.AsSpan(to));
        from.Y.AsSpan(at, gap).CopyTo(Y.AsSpan(to));
        Segments[state] = gap;
        long left = from.X[at + gap];
        long right = from.X[at + gap + 1];
        long floor = from.Y[at + gap];
        if (right - left == across)
        {
            Append(state, left, floor + along);
        }
        else
        {
            Append(state, left, atLeft ? floor + along : floor);
            Append(state, atLeft ? left + across : right - across, atLeft ? floor : floor + along);
        }

        // What follows the gap is as it was, but for a segment that goes on level with what was laid.
        int written = Segments[state];
        int rest = gap + 1;
        rest += rest < last && from.Y[at + rest] == Y[to + written - 1] ? 1 : 0;
        from.X.AsSpan(at + rest, last - rest + 1).CopyTo(X.AsSpan(to + written));
        from.Y.AsSpan(at + rest, last - rest).CopyTo(Y.AsSpan(to + written));
        Segments[state] = written + last - rest;
        Waste[state] = from.Waste[parent];
        Remaining[state] = from.Remaining[parent] - across * along;
        Debug.Assert(Remaining[state] >= 0, "More area is laid than there is.");
    }

    /// <summary>Becomes, in one state, what another state of the layer is.</summary>
    /// <param name="state">The state that is written.</param>
    /// <param name="from">The state that is read.</param>
    public void Copy(int state, int from)
    {
        Array.Copy(X, from * Stride, X, state * Stride, Segments[from] + 1);
        Array.Copy(Y, from * Stride, Y, state * Stride, Segments[from]);
        Array.Copy(Left, from * kinds, Left, state * kinds, kinds);
        Array.Copy(_open, from * words, _open, state * words, words);
        (Segments[state], Gap[state], LeftHash[state]) = (Segments[from], Gap[from], LeftHash[from]);
        (Waste[state], RowLoss[state]) = (Waste[from], RowLoss[from]);
        (Remaining[state], Hardness[state]) = (Remaining[from], Hardness[from]);
        Sums?.Copy(state, from);
    }

    /// <summary>Closes a gap: raises it to its lower wall, in a box of the given height.</summary>
    /// <param name="state">Which one.</param>
    /// <param name="gap">Index of its lowest segment.</param>
    /// <param name="height">Height of the box, grid units.</param>
    public void Raise(int state, int gap, long height)
    {
        int at = state * Stride;
        int count = Segments[state];
        long left = gap > 0 ? Y[at + gap - 1] : height;
        long right = gap < count - 1 ? Y[at + gap + 1] : height;
        long to = Math.Min(left, right);
        Debug.Assert(to > Y[at + gap], "A gap is raised downwards.");
        Waste[state] += (X[at + gap + 1] - X[at + gap]) * (to - Y[at + gap]);
        Y[at + gap] = to;
        if (gap < count - 1 && right == to)
        {
            Drop(at + gap + 1, at + count);
            count--;
        }

        if (gap > 0 && left == to)
        {
            Drop(at + gap, at + count);
            count--;
        }

        Segments[state] = count;
    }

    /// <summary>Joins neighbours of one height.</summary>
    /// <param name="state">Which one.</param>
    public void Join(int state)
    {
        int at = state * Stride;
        int segments = Segments[state];
        long end = X[at + segments];
        Segments[state] = 0;
        for (var segment = 0; segment < segments; segment++)
        {
            Append(state, X[at + segment], Y[at + segment]);
        }

        X[at + Segments[state]] = end;
    }

    /// <summary>Adds a segment, unless it is level with the last one and so goes on with it.</summary>
    private void Append(int state, long x, long y)
    {
        int at = state * Stride + Segments[state];
        if (Segments[state] == 0 || Y[at - 1] != y)
        {
            (X[at], Y[at]) = (x, y);
            Segments[state]++;
        }
    }

    /// <summary>Takes a segment out of a row: those behind it move up by one.</summary>
    private void Drop(int segment, int end)
    {
        Array.Copy(X, segment + 1, X, segment, end - segment);
        Array.Copy(Y, segment + 1, Y, segment, end - segment);
    }
}
