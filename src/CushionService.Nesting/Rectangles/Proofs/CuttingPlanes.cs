namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>A small linear program, maximise gain · x with rows · x at most their limits and x at least 0, to which rows are
/// added; solved anew each time by the simplex method on a dense tableau (Dantzig 1947). Limits are at least 0, so that
/// x = 0 is a start. It only proposes weights: what is proven with them is checked in whole numbers elsewhere.</summary>
internal sealed class CuttingPlanes(int variables)
{
    private const double Small = 1e-9;
    private readonly List<(double[] Row, double Limit)> _rows = [];
    private readonly double[] _gain = new double[variables];

    public void SetGain(int variable, double gain) => _gain[variable] = gain;

    public void Add(double[] row, double limit) => _rows.Add((row, limit));

    /// <summary>An optimal x, or the best found when the pivots run out.</summary>
    public double[] Solve()
    {
        int rows = _rows.Count;
        int columns = variables + 1;
        var tableau = new double[rows + 1][];
        var basis = new int[rows];
        var column = new int[variables];
        for (var index = 0; index < variables; index++)
        {
            column[index] = index;
        }

        for (var index = 0; index < rows; index++)
        {
            tableau[index] = [.. _rows[index].Row, _rows[index].Limit + (index + 1) * 1e-10];
            basis[index] = variables + index;
        }

        tableau[rows] = [.. _gain.Select(gain => -gain), 0];
        for (var pivots = 0; pivots < 50 * columns; pivots++)
        {
            int enter = -1;
            for (var index = 0; index < variables; index++)
            {
                if (tableau[rows][index] < -Small && (enter < 0 || tableau[rows][index] < tableau[rows][enter]))
                {
                    enter = index;
                }
            }

            int leave = -1;
            for (var index = 0; enter >= 0 && index < rows; index++)
            {
                if (tableau[index][enter] > Small
                    && (leave < 0 || tableau[index][variables] / tableau[index][enter] < tableau[leave][variables] / tableau[leave][enter]))
                {
                    leave = index;
                }
            }

            if (leave < 0)
            {
                break;
            }

            Pivot(tableau, leave, enter);
            (basis[leave], column[enter]) = (column[enter], basis[leave]);
        }

        var solution = new double[variables];
        for (var index = 0; index < rows; index++)
        {
            if (basis[index] < variables)
            {
                solution[basis[index]] = Math.Max(0, tableau[index][variables]);
            }
        }

        return solution;
    }

    // The basic columns are kept implicitly: the leaving variable's column takes the entering one's place.
    private static void Pivot(double[][] tableau, int leave, int enter)
    {
        double pivot = tableau[leave][enter];
        double[] row = tableau[leave];
        for (var index = 0; index < row.Length; index++)
        {
            row[index] = index == enter ? 1 / pivot : row[index] / pivot;
        }

        for (var other = 0; other < tableau.Length; other++)
        {
            double factor = tableau[other][enter];
            if (other == leave || factor == 0)
            {
                continue;
            }

            double[] target = tableau[other];
            for (var index = 0; index < target.Length; index++)
            {
                target[index] = index == enter ? -factor / pivot : target[index] - factor * row[index];
            }
        }
    }
}
