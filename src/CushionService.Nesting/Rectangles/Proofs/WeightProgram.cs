using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The linear program behind <see cref="AxisWeights"/>: one variable for the weight of each extent and one for what a copy of each
/// kind adds. It maximises what all copies add, while no row of the box holds weights above 1. Rows that break this are added as they are
/// found (cutting planes; the fullest row is a knapsack, as in Gilmore and Gomory 1961).</summary>
internal sealed class WeightProgram
{
    // Weights are whole parts of this, rounded down: a weight too small costs a bound, never a wrong one.
    private const double Scale = 1 << 20;

    // After this many rows the bound hardly grows any more.
    private const int MostRounds = 60;
    private readonly BoxContents _box;
    private readonly AxisWeights? _across;
    private readonly int[] _extents;
    private readonly int[] _upright;
    private readonly int[] _turned;
    private readonly CuttingPlanes _program;
    private readonly int _variables;

    /// <summary>Sets the program up with the rows of single extents.</summary>
    /// <param name="box">The rectangles and the box; the weights are for its width.</param>
    /// <param name="across">The weights of the other axis; null for its extents themselves.</param>
    public WeightProgram(BoxContents box, AxisWeights? across)
    {
        (_box, _across) = (box, across);
        int kinds = box.Across.Length;
        (_upright, _turned) = (new int[kinds], new int[kinds]);
        _extents = [.. box.Across.Concat(box.Along.Where((_, kind) => box.Turns[kind])).Where(e => e <= box.Width).Distinct().Order()];
        _variables = _extents.Length + kinds;
        var gain = new double[_variables];
        for (var kind = 0; kind < kinds; kind++)
        {
            gain[_extents.Length + kind] = box.Count[kind];
        }

        _program = new CuttingPlanes(gain);
        LimitKinds();
        LimitSingleExtents();
    }

    /// <summary>Solves by cutting planes: rows that the weights overfill are added until none is.</summary>
    /// <param name="most">Operations after which no more rows are added; the first round is always done.</param>
    /// <param name="budget">Looks for the caller's cancellation between rounds; null for none.</param>
    /// <returns>Weights that hold in whole numbers: rounded down, and with the fullest row counted, whatever the
    /// program's rounding was.</returns>
    public AxisWeights Solve(long most = long.MaxValue, StepBudget? budget = null)
    {
        // Together with weights that are given, only those that rule the box out are of use.
        double enough = _across is null ? 0 : _across.Best[^1] / Scale;
        var rows = new FullestRow(_box, _extents, _variables, (long)(Scale * 1.000001));
        for (var round = 0; round < MostRounds; round++)
        {
            budget?.Look();
            double[] solution = _program.Solve();
            for (var kind = 0; kind < _upright.Length; kind++)
            {
                _upright[kind] = Weight(solution, _box.Across[kind]);
                _turned[kind] = _box.Turns[kind] ? Weight(solution, _box.Along[kind]) : 0;
            }

            double[]? overfull = rows.Find(_upright, _turned);
            if (overfull is null || _program.Value <= enough || rows.Work + _program.Work >= most)
            {
                break;
            }

            _program.Add(overfull, 1);
        }

        return new AxisWeights(_box, _upright, _turned, rows.Best, rows.Work + _program.Work);
    }

    /// <summary>The weight that the solution proposes for an extent, in whole parts.</summary>
    private int Weight(double[] solution, int extent) => (int)(solution[Math.Max(0, Array.BinarySearch(_extents, extent))] * Scale);

    /// <summary>What a copy adds is at most its weight times what it is worth along the other axis, in each turn that it can
    /// take.</summary>
    private void LimitKinds()
    {
        for (var kind = 0; kind < _upright.Length; kind++)
        {
            var (extent, other) = (_box.Across[kind], _box.Along[kind]);
            bool turnedFits = _box.Turns[kind] && (_across is null || extent < _across.Best.Length);
            if (_across is null || other < _across.Best.Length)
            {
                Limit(kind, extent, _across?.Upright[kind] / Scale ?? other);
            }

            if (turnedFits)
            {
                Limit(kind, other, _across?.Turned[kind] / Scale ?? extent);
            }
        }
    }

    /// <summary>One turn of a kind: what a copy adds is no more than its weight times a
    /// worth.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="along">Its extent along the axis in that turn.</param>
    /// <param name="worth">What a unit of weight of that extent is worth.</param>
    private void Limit(int kind, int along, double worth)
    {
        if (along <= _box.Width)
        {
            var row = new double[_variables];
            row[_extents.Length + kind] = 1;
            row[Array.BinarySearch(_extents, along)] = -worth;
            _program.Add(row, 0);
        }
    }

    /// <summary>The first rows: as many copies of one extent as fit side by side.</summary>
    private void LimitSingleExtents()
    {
        for (var index = 0; index < _extents.Length; index++)
        {
            var row = new double[_variables];
            row[index] = Math.Max(1, Math.Min(_box.Width / _extents[index], CopiesWith(_extents[index])));
            _program.Add(row, 1);
        }
    }

    /// <summary>Copies that can have an extent along the axis.</summary>
    private int CopiesWith(int extent) =>
        Enumerable
            .Range(0, _upright.Length)
            .Sum(kind => _box.Across[kind] == extent || (_box.Turns[kind] && _box.Along[kind] == extent) ? _box.Count[kind] : 0);
}
