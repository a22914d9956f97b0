using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>The area that a partial layout can no longer cover: rows and columns of its free stretches are filled at most to the greatest
/// sum of extents of the copies left (Christofides and Whitlock 1977).</summary>
/// <param name="copies">Number of copies.</param>
internal sealed class BeamLosses(int copies)
{
    // Stretches that are open to the right: each lower than the one before.
    private readonly long[] _openX = new long[copies + 4];
    private readonly long[] _openY = new long[copies + 4];

    /// <summary>Raises each segment to where columns can begin, as if what comes were pushed up.</summary>
    /// <param name="layer">Holds the state, and its sums.</param>
    /// <param name="state">Which one.</param>
    /// <param name="height">Height of the box.</param>
    public static void RaiseColumns(BeamLayer layer, int state, long height)
    {
        int at = state * layer.Stride;
        long lost = 0;
        for (var segment = 0; segment < layer.Segments[state]; segment++)
        {
            long rise = layer.Sums!.LostAlong(state, height - layer.Y[at + segment]);
            lost += rise * (layer.X[at + segment + 1] - layer.X[at + segment]);
            layer.Y[at + segment] += rise;
        }

        layer.Waste[state] += lost;
        if (lost > 0)
        {
            layer.Join(state);
        }
    }

    /// <summary>Area that the rows of a state lose. Each level stretch between higher walls is a run of equal rows until it meets the
    /// lower one; from there on it is one stretch with what lies behind that wall.</summary>
    /// <param name="layer">Holds the state, and its sums.</param>
    /// <param name="state">Which one.</param>
    /// <param name="height">Height of the box.</param>
    public long OfRows(BeamLayer layer, int state, long height)
    {
        int at = state * layer.Stride;
        int segments = layer.Segments[state];
        var (lost, open) = (0L, 0);
        for (var segment = 0; segment <= segments; segment++)
        {
            long x = layer.X[at + segment];
            long y = segment < segments ? layer.Y[at + segment] : height;
            long left = x;
            while (open > 0 && _openY[open - 1] < y)
            {
                open--;
                long wall = Math.Min(y, open > 0 ? _openY[open - 1] : height);
                lost += (wall - _openY[open]) * layer.Sums!.LostAcross(state, x - _openX[open]);
                Debug.Assert(open > 0 || wall == y, "A stretch ends below the top at no wall.");
                left = wall < y ? _openX[open - 1] : _openX[open];
            }

            if (open == 0 || _openY[open - 1] > y)
            {
                (_openX[open], _openY[open]) = (left, y);
                open++;
            }
        }

        return lost;
    }
}
