namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>A weight for every extent along one axis such that no row of the box holds more than <see cref="Best"/> of
/// its length: the discrete form of a dual feasible function (Fekete and Schepers 2001), found as the dual of the bar
/// relaxation (Scheithauer 1999). All in whole numbers, so that the bound is exact whatever the linear program did.</summary>
internal sealed class AxisWeights
{
    private const double Scale = 1 << 20;

    /// <summary>The weights of the bar relaxation, or, when that would take too long, the extents themselves.</summary>
    public static AxisWeights Of(int[] extent, int[] other, bool[] turns, int[] count, int limit, bool solve) =>
        solve ? new AxisWeights(extent, other, turns, count, limit, null) : new AxisWeights(extent, other, turns, limit);

    /// <summary>The weights that go best with those of the other axis: of the two together, no box holds more than the product
    /// (the conservative scales of Fekete and Schepers 2004).</summary>
    public static AxisWeights Against(AxisWeights across, int[] extent, int[] other, bool[] turns, int[] count, int limit) =>
        new(extent, other, turns, count, limit, across);

    private AxisWeights(int[] extent, int[] other, bool[] turns, int limit)
    {
        Upright = extent;
        Turned = [.. other.Select((e, kind) => turns[kind] ? e : 0)];
        Best = new long[limit + 1];
        for (var length = 0; length <= limit; length++)
        {
            Best[length] = length;
        }
    }

    /// <summary>Solves the bar relaxation by cutting planes: rows that the weights overfill are added until none is.</summary>
    /// <param name="extent">Extent of each kind along the axis, unturned.</param>
    /// <param name="other">Extent of each kind along the other axis.</param>
    /// <param name="turns">Whether each kind may turn.</param>
    /// <param name="count">Copies of each kind.</param>
    /// <param name="limit">Extent of the box along the axis.</param>
    /// <param name="across">The weights of the other axis; null for its extents themselves.</param>
    private AxisWeights(int[] extent, int[] other, bool[] turns, int[] count, int limit, AxisWeights? across)
    {
        int kinds = extent.Length;
        (Upright, Turned, Best) = (new int[kinds], new int[kinds], new long[limit + 1]);
        int[] extents = [.. extent.Concat(other.Where((_, kind) => turns[kind])).Where(e => e <= limit).Distinct().Order()];
        int variables = extents.Length + kinds;
        var gain = new double[variables];
        for (var kind = 0; kind < kinds; kind++)
        {
            gain[extents.Length + kind] = count[kind];
        }

        var program = new CuttingPlanes(gain);
        var choices = new List<int>();
        var marks = new List<byte[]>();
        for (var kind = 0; kind < kinds; kind++)
        {
            bool turnedFits = turns[kind] && (across is null || extent[kind] < across.Best.Length);
            if (across is null || other[kind] < across.Best.Length)
            {
                Limit(kind, extent[kind], across?.Upright[kind] / Scale ?? other[kind]);
            }

            if (turnedFits)
            {
                Limit(kind, other[kind], across?.Turned[kind] / Scale ?? extent[kind]);
            }
        }

        for (var index = 0; index < extents.Length; index++)
        {
            var row = new double[variables];
            row[index] = Math.Max(1, Math.Min(limit / extents[index], CopiesWith(extents[index])));
            program.Add(row, 1);
        }

        for (var round = 0; round < 60; round++)
        {
            double[] solution = program.Solve();
            for (var kind = 0; kind < kinds; kind++)
            {
                Upright[kind] = Weight(extent[kind]);
                Turned[kind] = turns[kind] ? Weight(other[kind]) : 0;
            }

            double[]? overfull = Fill();
            if (overfull is null)
            {
                break;
            }

            program.Add(overfull, 1);

            int Weight(int e) => (int)(solution[Math.Max(0, Array.BinarySearch(extents, e))] * Scale);
        }

        for (var kind = 0; kind < kinds; kind++)
        {
            Need += count[kind] * Share(kind, extent[kind], other[kind], turns[kind]);
        }

        void Limit(int kind, int along, double worth)
        {
            if (along <= limit)
            {
                var row = new double[variables];
                row[extents.Length + kind] = 1;
                row[Array.BinarySearch(extents, along)] = -worth;
                program.Add(row, 0);
            }
        }

        int CopiesWith(int e) => Enumerable.Range(0, kinds).Sum(k => extent[k] == e || (turns[k] && other[k] == e) ? count[k] : 0);

        // The fullest row under the current weights; null when it holds no more than a whole box's worth.
        double[]? Fill()
        {
            Array.Clear(Best);
            choices.Clear();
            for (var kind = 0; kind < kinds; kind++)
            {
                for (var copy = 0; copy < Math.Min(count[kind], limit / Math.Min(extent[kind], turns[kind] ? other[kind] : extent[kind])); copy++)
                {
                    if (marks.Count == choices.Count)
                    {
                        marks.Add(new byte[limit + 1]);
                    }

                    byte[] taken = marks[choices.Count];
                    Array.Clear(taken);
                    choices.Add(kind);
                    for (int at = limit; at > 0; at--)
                    {
                        Take(kind, extent[kind], Upright[kind], 1, at, taken);
                        if (turns[kind])
                        {
                            Take(kind, other[kind], Turned[kind], 2, at, taken);
                        }
                    }
                }
            }

            if (Best[limit] <= (long)(Scale * 1.000001))
            {
                return null;
            }

            var row = new double[variables];
            int rest = limit;
            for (int index = choices.Count - 1; index >= 0; index--)
            {
                var (kind, taken) = (choices[index], marks[index]);
                if (taken[rest] != 0)
                {
                    int e = taken[rest] == 1 ? extent[kind] : other[kind];
                    row[Array.BinarySearch(extents, e)]++;
                    rest -= e;
                }
            }

            return row;
        }

        void Take(int kind, int e, int weight, byte mark, int at, byte[] taken)
        {
            // Smaller entries are still those without this copy, for the row is filled from its far end down.
            if (e <= at && Best[at - e] + weight > Best[at])
            {
                Best[at] = Best[at - e] + weight;
                taken[at] = mark;
            }
        }
    }

    /// <summary>Weight of each kind's extent along the axis, unturned.</summary>
    public int[] Upright { get; }

    /// <summary>Weight of each kind's extent along the axis when turned; 0 when it may not turn.</summary>
    public int[] Turned { get; }

    /// <summary>The most weight that a free stretch of each length can hold.</summary>
    public long[] Best { get; }

    /// <summary>The weight times the extent along the other axis of all copies, in the turn where that is least.</summary>
    public long Need { get; }

    /// <summary>The figures by which these weights and those of the other axis rule the box out together; null when they do not.</summary>
    public string? RuleOutWith(AxisWeights across, int[] extent, int[] other, bool[] turns, int[] count)
    {
        Int128 need = 0;
        for (var kind = 0; kind < count.Length; kind++)
        {
            var least = Int128.MaxValue;
            if (extent[kind] < Best.Length && other[kind] < across.Best.Length)
            {
                least = (Int128)Upright[kind] * across.Upright[kind];
            }

            if (turns[kind] && other[kind] < Best.Length && extent[kind] < across.Best.Length)
            {
                least = Int128.Min(least, (Int128)Turned[kind] * across.Turned[kind]);
            }

            need += least == Int128.MaxValue ? 0 : least * count[kind];
        }

        Int128 room = (Int128)Best[^1] * across.Best[^1];
        return need > room ? $"the weights of both axes need {need} of {room}" : null;
    }

    /// <summary>What one copy adds to <see cref="Need"/>.</summary>
    public long Share(int kind, int extent, int other, bool turns)
    {
        var (upright, turned) = Shares(kind, extent, other, turns);
        return Math.Min(upright, turned);
    }

    /// <summary>What one copy adds in each turn; <see cref="long.MaxValue"/> for a turn that it cannot take.</summary>
    public (long Upright, long Turned) Shares(int kind, int extent, int other, bool turns) => (
        extent < Best.Length ? (long)Upright[kind] * other : long.MaxValue,
        turns && other < Best.Length ? (long)Turned[kind] * extent : long.MaxValue);
}
