namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>A small linear program, maximise gain · x with rows · x at most their limits and x at least 0, to which rows are added. A dense
/// tableau of the simplex method: the primal finds the first optimum from x = 0 (limits are at least 0), the dual
/// repairs it after each new row (Lemke 1954). It only proposes weights: what is proven with them is checked in whole numbers.</summary>
internal sealed class CuttingPlanes
{
    // What is nearer to 0 counts as 0.
    private const double Small = 1e-9;

    // The program only proposes weights, so that an optimum missed costs a bound, never a wrong one.
    private const int MostPivots = 200;
    private readonly int _variables;

    // The tableau: each row in the columns of the present basis, its limit last; the variable of each row and of each column.
    private readonly List<double[]> _rows = [];
    private readonly List<int> _basis = [];
    private readonly int[] _column;
    private readonly double[] _objective;
    private readonly double[] _solution;

    /// <summary>A program without rows.</summary>
    /// <param name="gain">What each variable adds for each unit.</param>
    public CuttingPlanes(double[] gain)
    {
        _variables = gain.Length;
        _column = [.. Enumerable.Range(0, _variables)];
        _objective = [.. gain.Select(value => -value), 0];
        _solution = new double[_variables];
    }

    /// <summary>The greatest value under the rows so far.</summary>
    public double Value => _objective[_variables];

    /// <summary>What all pivots cost, in operations.</summary>
    public long Work { get; private set; }

    /// <summary>Adds a row, written in the columns of the present basis.</summary>
    /// <param name="row">Coefficient of each variable.</param>
    /// <param name="limit">What the row may come to, at least 0.</param>
    public void Add(double[] row, double limit)
    {
        // A tiny, growing excess keeps equal ratios, and so cycling, away.
        var added = new double[_variables + 1];
        added[_variables] = limit + (_rows.Count + 1) * 1e-10;
        for (var index = 0; index < _variables; index++)
        {
            if (_column[index] < _variables)
            {
                added[index] += row[_column[index]];
            }
        }

        for (var basic = 0; basic < _rows.Count; basic++)
        {
            double factor = _basis[basic] < _variables ? row[_basis[basic]] : 0;
            for (var index = 0; factor != 0 && index <= _variables; index++)
            {
                added[index] -= factor * _rows[basic][index];
            }
        }

        _basis.Add(_variables + _rows.Count);
        _rows.Add(added);
    }

    /// <summary>An optimal x, or the last one when the pivots run out.</summary>
    /// <returns>An array of the program's own, which the next call writes over.</returns>
    public double[] Solve()
    {
        for (var pivots = 0; pivots < MostPivots && (Repair() || Improve()); pivots++) { }

        Array.Clear(_solution);
        for (var row = 0; row < _rows.Count; row++)
        {
            if (_basis[row] < _variables)
            {
                _solution[_basis[row]] = Math.Max(0, _rows[row][_variables]);
            }
        }

        return _solution;
    }

    /// <summary>A pivot of the primal method; false at the optimum.</summary>
    // The column that gains most for a unit (Dantzig's rule), and the row that limits it first.
    private bool Improve()
    {
        var enter = 0;
        for (var index = 1; index < _variables; index++)
        {
            enter = _objective[index] < _objective[enter] ? index : enter;
        }

        if (_objective[enter] >= -Small)
        {
            return false;
        }

        var (leave, least) = (-1, double.MaxValue);
        for (var row = 0; row < _rows.Count; row++)
        {
            double coefficient = _rows[row][enter];
            if (coefficient > Small && _rows[row][_variables] / coefficient < least)
            {
                (leave, least) = (row, _rows[row][_variables] / coefficient);
            }
        }

        return leave >= 0 && Pivot(leave, enter);
    }

    /// <summary>A pivot of the dual method; false when every row holds.</summary>
    // The row that is broken most, and the column whose gain suffers least (the dual ratio test).
    private bool Repair()
    {
        var leave = -1;
        for (var row = 0; row < _rows.Count; row++)
        {
            if (_rows[row][_variables] < -Small && (leave < 0 || _rows[row][_variables] < _rows[leave][_variables]))
            {
                leave = row;
            }
        }

        if (leave < 0)
        {
            return false;
        }

        var (enter, least) = (-1, double.MaxValue);
        for (var index = 0; index < _variables; index++)
        {
            double coefficient = -_rows[leave][index];
            if (coefficient > Small && _objective[index] / coefficient < least)
            {
                (enter, least) = (index, _objective[index] / coefficient);
            }
        }

        return enter >= 0 && Pivot(leave, enter);
    }

    // The basic columns are kept implicitly: the leaving variable's column takes the entering one's place.
    /// <param name="leave">Row of the variable that leaves the basis.</param>
    /// <param name="enter">Column of the one that enters it.</param>
    /// <returns>Always true: the tableau has changed.</returns>
    private bool Pivot(int leave, int enter)
    {
        Work += (long)_rows.Count * _variables;
        double[] row = _rows[leave];
        double pivot = row[enter];
        row[enter] = 1;
        for (var index = 0; index <= _variables; index++)
        {
            row[index] /= pivot;
        }

        for (int other = -1; other < _rows.Count; other++)
        {
            double[] target = other < 0 ? _objective : _rows[other];
            double factor = target[enter];
            if (other == leave || factor == 0)
            {
                continue;
            }

            target[enter] = 0;
            for (var index = 0; index <= _variables; index++)
            {
                target[index] -= factor * row[index];
            }
        }

        (_basis[leave], _column[enter]) = (_column[enter], _basis[leave]);
        return true;
    }
}
