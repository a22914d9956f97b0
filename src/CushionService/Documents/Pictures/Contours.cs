using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>Lines of equal value over a polygon, found on a grid (marching squares, general geometry).</summary>
internal static class Contours
{
    private const int Cells = 22;

    /// <summary>The closed lines round what is above a level.</summary>
    /// <param name="polygon">Where it is looked for.</param>
    /// <param name="value">The value at a point.</param>
    /// <param name="level">The level.</param>
    public static List<List<PlanePoint>> Of(IReadOnlyList<PlanePoint> polygon, Func<PlanePoint, double> value, double level)
    {
        (PlanePoint low, PlanePoint high) = PlanePolygon.Extent(polygon);
        var step = new PlanePoint((high.X - low.X) / Cells, (high.Y - low.Y) / Cells);
        PlanePoint At(int i, int j) => new(low.X + i * step.X, low.Y + j * step.Y);
        var values = new double[Cells + 1, Cells + 1];
        for (int i = 0; i <= Cells; i++)
        {
            for (int j = 0; j <= Cells; j++)
            {
                values[i, j] = value(At(i, j)) - level;
            }
        }

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
                    (double a, double b) = (values[one.I, one.J], values[other.I, other.J]);
                    if (a > 0 == b > 0)
                    {
                        continue;
                    }

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
