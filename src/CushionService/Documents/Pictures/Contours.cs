using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>Lines of equal value over a polygon, found on a grid (marching squares, general geometry).</summary>
/// <remarks>Round the grid lies a frame without width whose values are least, so that a line that leaves the polygon's extent is closed
/// along it.</remarks>
internal sealed class Contours
{
    private const int Inner = 20;

    // With those of the frame.
    private const int Cells = Inner + 2;
    private readonly double[,] _values = new double[Cells + 1, Cells + 1];
    private readonly PlanePoint _low;
    private readonly PlanePoint _step;

    /// <summary>Takes the values over a polygon's extent.</summary>
    /// <param name="polygon">Where lines are looked for.</param>
    /// <param name="value">The value at a point.</param>
    public Contours(IReadOnlyList<PlanePoint> polygon, Func<PlanePoint, double> value)
    {
        (_low, PlanePoint high) = PlanePolygon.Extent(polygon);
        _step = new PlanePoint((high.X - _low.X) / Inner, (high.Y - _low.Y) / Inner);
        for (int i = 0; i <= Cells; i++)
        {
            for (int j = 0; j <= Cells; j++)
            {
                _values[i, j] = i is 0 or Cells || j is 0 or Cells ? double.MinValue : value(At(i, j));
            }
        }
    }

    private PlanePoint At(int i, int j) =>
        new(_low.X + Math.Clamp(i - 1, 0, Inner) * _step.X, _low.Y + Math.Clamp(j - 1, 0, Inner) * _step.Y);

    /// <summary>The closed lines round what is above a level.</summary>
    /// <param name="level">The value that the lines have.</param>
    /// <returns>Rings in no particular order, without those of five points or fewer, which are too small to be
    /// seen.</returns>
    public List<List<PlanePoint>> Of(double level)
    {
        // From the side of a cell on which a line enters to the one on which it leaves; sides are numbered over the whole grid.
        var next = new Dictionary<int, (int To, PlanePoint At)>();
        for (int i = 0; i < Cells; i++)
        {
            for (int j = 0; j < Cells; j++)
            {
                (int I, int J)[] corners = [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)];
                var enters = new List<(int Side, PlanePoint At)>();
                var leaves = new List<int>();
                for (int k = 0; k < 4; k++)
                {
                    ((int I, int J) one, (int I, int J) other) = (corners[k], corners[(k + 1) % 4]);
                    (double a, double b) = (_values[one.I, one.J] - level, _values[other.I, other.J] - level);
                    if (a > 0 == b > 0)
                    {
                        continue;
                    }

                    // Even numbers for sides that run across the grid, odd ones for those along it: two cells share the
                    // number of the side between them.
                    int side = k is 0 or 2
                        ? 2 * (i * (Cells + 1) + (k == 0 ? j : j + 1))
                        : 2 * ((k == 3 ? i : i + 1) * (Cells + 1) + j) + 1;
                    if (b > 0)
                    {
                        leaves.Add(side);
                    }
                    else
                    {
                        enters.Add((side, At(one.I, one.J) + a / (a - b) * (At(other.I, other.J) - At(one.I, one.J))));
                    }
                }

                for (int k = 0; k < Math.Min(enters.Count, leaves.Count); k++)
                {
                    next[enters[k].Side] = (leaves[k], enters[k].At);
                }
            }
        }

        return Rings(next);
    }

    private static List<List<PlanePoint>> Rings(Dictionary<int, (int To, PlanePoint At)> next)
    {
        var rings = new List<List<PlanePoint>>();
        while (next.Count > 0)
        {
            var ring = new List<PlanePoint>();
            int side = next.Keys.First();
            while (next.Remove(side, out (int To, PlanePoint At) on))
            {
                ring.Add(on.At);
                side = on.To;
            }

            if (ring.Count > 5)
            {
                rings.Add(ring);
            }
        }

        return rings;
    }
}
