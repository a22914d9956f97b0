using System.Numerics;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Asks whether all copies fit the strip up to a length. Some kinds alone often cannot, which is quicker to show than that all
/// cannot; so sets of the larger kinds are tried first, each along the strip and across it, with growing shares of the steps.</summary>
internal sealed class BoxProblem(BoxGrid grid, StepBudget budget)
{
    private const int MostKindsInParts = 10;
    private const int MostKindsRelaxed = 14;
    private readonly RectangleSet _set = grid.Set;
    private readonly List<int[]> _parts = Parts(grid);
    private AxisWeights? _rows;
    private AxisWeights? _columns;
    private int _height;

    /// <summary>The corners and turns of the copies after a layout was found.</summary>
    public long[] X { get; } = new long[grid.Set.Copies];

    /// <inheritdoc cref="X"/>
    public long[] Y { get; } = new long[grid.Set.Copies];

    /// <inheritdoc cref="X"/>
    public bool[] Turned { get; } = new bool[grid.Set.Copies];

    /// <summary>The figures by which the bar relaxation, of rows or of columns, rules a box out; null when it does not.</summary>
    public string? RelaxationRulesOut(long length)
    {
        if (grid.Height(length) is not { } height)
        {
            return null;
        }

        if (!grid.EachFits(height))
        {
            return "a piece does not fit";
        }

        Relax(height);
        long rowRoom = _rows!.Best[grid.Width] * height;
        long columnRoom = _columns!.Best[height] * grid.Width;
        return _rows.Need > rowRoom ? $"the rows' weights need {_rows.Need} of {rowRoom}"
            : _columns.Need > columnRoom ? $"the columns' weights need {_columns.Need} of {columnRoom}"
            : null;
    }

    /// <summary>Searches for so many steps.</summary>
    public BoxOutcome Decide(long length, long steps)
    {
        if (grid.Height(length) is not { } height)
        {
            return BoxOutcome.Unknown;
        }

        Relax(height);
        long end = budget.Spent + steps;
        int[] all = [.. Enumerable.Range(0, _set.Kinds)];
        for (long share = Math.Max(steps / 2000, 2400); share < steps / 8; share *= 8)
        {
            for (int index = _parts.Count - 1; index >= 0 && budget.Spent < end - steps / 3; index--)
            {
                var part = Search(_parts[index], height, share);
                if (part == BoxOutcome.Impossible)
                {
                    return part;
                }

                if (part == BoxOutcome.Found)
                {
                    _parts.RemoveAt(index);
                }
            }

            var whole = Search(all, height, Math.Min(share, end - budget.Spent));
            if (whole != BoxOutcome.Unknown)
            {
                return whole;
            }
        }

        return Search(all, height, end - budget.Spent);
    }

    private void Relax(int height)
    {
        bool solve = _set.Kinds <= MostKindsRelaxed;
        _rows ??= AxisWeights.Of(grid.Across, grid.Along, _set.Turns, _set.Count, grid.Width, solve);
        if (height != _height)
        {
            _columns = AxisWeights.Of(grid.Along, grid.Across, _set.Turns, _set.Count, height, solve);
            _height = height;
        }
    }

    private BoxOutcome Search(int[] kinds, int height, long steps)
    {
        int[] across = [.. kinds.Select(kind => grid.Across[kind])];
        int[] along = [.. kinds.Select(kind => grid.Along[kind])];
        int[] count = [.. kinds.Select(kind => _set.Count[kind])];
        bool[] turns = [.. kinds.Select(kind => _set.Turns[kind])];
        bool all = kinds.Length == _set.Kinds;
        var rows = all ? _rows! : AxisWeights.Of(across, along, turns, count, grid.Width, true);
        var columns = all ? _columns! : AxisWeights.Of(along, across, turns, count, height, true);
        int seenLog = Math.Clamp(BitOperations.Log2((ulong)steps / 64 + 1), 6, 19);
        var upright = new BoxSearch(across, along, turns, count, grid.Width, height, rows, columns, budget, seenLog);
        var sideways = new BoxSearch(along, across, turns, count, height, grid.Width, columns, rows, budget, seenLog);
        long stop = budget.Spent + steps;
        for (long slice = Math.Max(steps / 16, 1000); budget.Spent < stop; slice *= 2)
        {
            foreach (var search in (ReadOnlySpan<BoxSearch>)[upright, sideways])
            {
                var outcome = search.Run(Math.Min(slice, stop - budget.Spent));
                if (outcome == BoxOutcome.Found && all)
                {
                    Read(search, search == sideways);
                }

                if (outcome != BoxOutcome.Unknown)
                {
                    return outcome;
                }
            }
        }

        return BoxOutcome.Unknown;
    }

    private void Read(BoxSearch search, bool sideways)
    {
        var next = new int[_set.Kinds];
        for (int copy = _set.Copies - 1; copy >= 0; copy--)
        {
            next[_set.KindOf[copy]] = copy;
        }

        for (var index = 0; index < search.Laid; index++)
        {
            var (kind, x, y, turned) = search[index];
            int copy = next[kind]++;
            (X[copy], Y[copy]) = sideways ? (y * grid.UnitX, x * grid.UnitY) : (x * grid.UnitX, y * grid.UnitY);
            Turned[copy] = turned;
        }
    }

    /// <summary>The first kinds by area, by longer and by shorter side, and all kinds but one.</summary>
    private static List<int[]> Parts(BoxGrid grid)
    {
        var parts = new List<int[]>();
        int kinds = grid.Set.Kinds;
        if (kinds > MostKindsInParts)
        {
            return parts;
        }

        for (var rule = 0; rule < 3; rule++)
        {
            int[] order = [.. Enumerable.Range(0, kinds).OrderByDescending(kind => Size(kind, rule))];
            for (var taken = 1; taken < kinds; taken++)
            {
                Propose(order[..taken]);
            }
        }

        for (var dropped = 0; dropped < kinds && kinds > 2; dropped++)
        {
            Propose([.. Enumerable.Range(0, kinds).Where(kind => kind != dropped)]);
        }

        return parts;

        long Size(int kind, int rule) => rule switch
        {
            0 => (long)grid.Across[kind] * grid.Along[kind],
            1 => Math.Max(grid.Across[kind], grid.Along[kind]),
            _ => Math.Min(grid.Across[kind], grid.Along[kind]),
        };

        void Propose(int[] part)
        {
            Array.Sort(part);
            if (!parts.Any(other => other.SequenceEqual(part)))
            {
                parts.Add(part);
            }
        }
    }
}
