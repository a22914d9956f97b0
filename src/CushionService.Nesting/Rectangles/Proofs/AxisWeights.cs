namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>A weight for every extent along one axis such that no row of the box holds more than <see cref="Best"/> of
/// its length: the discrete form of a dual feasible function (Fekete and Schepers 2001), found as the dual of the bar
/// relaxation (Scheithauer 1999). All in whole numbers, so that the bound is exact whatever the linear program did.</summary>
internal sealed class AxisWeights
{
    // Weights are whole parts of this.
    private const double Scale = 1 << 20;

    /// <summary>The weights of the bar relaxation along the width, or the extents themselves.</summary>
    public static AxisWeights Of(BoxContents box, bool solve) => solve ? new AxisWeights(box, null) : new AxisWeights(box);

    /// <summary>The weights that go best with those of the other axis: of the two together, no box holds more than the product
    /// (the conservative scales of Fekete and Schepers 2004).</summary>
    public static AxisWeights Against(AxisWeights across, BoxContents box) => new(box, across);

    private AxisWeights(BoxContents box)
    {
        Upright = box.Across;
        Turned = [.. box.Along.Select((e, kind) => box.Turns[kind] ? e : 0)];
        Best = new long[box.Width + 1];
        for (var length = 0; length <= box.Width; length++)
        {
            Best[length] = length;
        }

        SumNeed(box);
    }

    /// <summary>Solves the bar relaxation by cutting planes: rows that the weights overfill are added until none is.</summary>
    /// <param name="box">The rectangles and the box; the weights are for its width.</param>
    /// <param name="across">The weights of the other axis; null for its extents themselves.</param>
    private AxisWeights(BoxContents box, AxisWeights? across)
    {
        var (extent, other, turns, count, limit, _) = box;
        // Together with weights that are given, only those that rule the box out are of use.
        double enough = across is null ? 0 : across.Best[^1] / Scale;
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
        var choices = new List<(int Kind, int Copies)>();
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
            if (overfull is null || program.Value <= enough)
            {
                break;
            }

            program.Add(overfull, 1);

            int Weight(int e) => (int)(solution[Math.Max(0, Array.BinarySearch(extents, e))] * Scale);
        }

        Work += program.Work;
        SumNeed(box);

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
                // Copies that lie the same way are taken by ones, twos, fours; those that may turn one by one.
                int rest = Math.Min(count[kind], limit / Math.Min(extent[kind], turns[kind] ? other[kind] : extent[kind]));
                for (var copies = 1; rest > 0; rest -= copies, copies = Math.Min(rest, turns[kind] ? 1 : 2 * copies))
                {
                    Work += limit;
                    if (marks.Count == choices.Count)
                    {
                        marks.Add(new byte[limit + 1]);
                    }

                    byte[] taken = marks[choices.Count];
                    taken.AsSpan().Clear();
                    choices.Add((kind, copies));
                    if (turns[kind])
                    {
                        TakeEither(extent[kind], Upright[kind], other[kind], Turned[kind], Best, taken);
                    }
                    else
                    {
                        Take(copies * extent[kind], (long)copies * Upright[kind], Best, taken);
                    }
                }
            }

            if (Best[limit] <= (long)(Scale * 1.000001))
            {
                return null;
            }

            var row = new double[variables];
            int free = limit;
            for (int index = choices.Count - 1; index >= 0; index--)
            {
                var ((kind, copies), taken) = (choices[index], marks[index]);
                if (taken[free] != 0)
                {
                    int e = taken[free] == 1 ? extent[kind] : other[kind];
                    row[Array.BinarySearch(extents, e)] += copies;
                    free -= copies * e;
                }
            }

            return row;
        }
    }

    // Smaller entries are still those without these copies, for the row is filled from its far end down.
    private static void Take(int extent, long weight, long[] best, byte[] taken)
    {
        for (int at = best.Length - 1; at >= extent; at--)
        {
            long with = best[at - extent] + weight;
            if (with > best[at])
            {
                (best[at], taken[at]) = (with, 1);
            }
        }
    }

    private static void TakeEither(int upright, int uprightWeight, int turned, int turnedWeight, long[] best, byte[] taken)
    {
        for (int at = best.Length - 1; at >= Math.Min(upright, turned); at--)
        {
            long either = best[at];
            byte mark = 0;
            if (upright <= at && best[at - upright] + uprightWeight > either)
            {
                (either, mark) = (best[at - upright] + uprightWeight, 1);
            }

            if (turned <= at && best[at - turned] + turnedWeight > either)
            {
                (either, mark) = (best[at - turned] + turnedWeight, 2);
            }

            (best[at], taken[at]) = (either, mark);
        }
    }

    /// <summary>Weight of each kind's extent along the axis, unturned.</summary>
    public int[] Upright { get; }

    /// <summary>Weight of each kind's extent along the axis when turned; 0 when it may not turn.</summary>
    public int[] Turned { get; }

    /// <summary>The most weight that a free stretch of each length can hold.</summary>
    public long[] Best { get; }

    /// <summary>The weight times the extent along the other axis of all copies, in the turn where that is least.</summary>
    public long Need { get; private set; }

    /// <summary>What the weights cost to find, in operations.</summary>
    public long Work { get; private set; }

    /// <summary>The figures by which these weights and those of the other axis rule the box out together; null when they do not.</summary>
    public string? RuleOutWith(AxisWeights across, BoxContents box)
    {
        Int128 need = 0;
        for (var kind = 0; kind < box.Count.Length; kind++)
        {
            var (extent, other, least) = (box.Across[kind], box.Along[kind], Int128.MaxValue);
            if (extent < Best.Length && other < across.Best.Length)
            {
                least = (Int128)Upright[kind] * across.Upright[kind];
            }

            if (box.Turns[kind] && other < Best.Length && extent < across.Best.Length)
            {
                least = Int128.Min(least, (Int128)Turned[kind] * across.Turned[kind]);
            }

            need += least == Int128.MaxValue ? 0 : least * box.Count[kind];
        }

        Int128 room = (Int128)Best[^1] * across.Best[^1];
        return need > room ? $"the weights of both axes need {need} of {room}" : null;
    }

    /// <summary>What one copy adds to <see cref="Need"/>.</summary>
    public long Share(int kind, BoxContents box)
    {
        var (upright, turned) = Shares(kind, box);
        return Math.Min(upright, turned);
    }

    /// <summary>What one copy adds in each turn; <see cref="long.MaxValue"/> for a turn that it cannot take.</summary>
    public (long Upright, long Turned) Shares(int kind, BoxContents box) =>
        (
            box.Across[kind] < Best.Length ? (long)Upright[kind] * box.Along[kind] : long.MaxValue,
            box.Turns[kind] && box.Along[kind] < Best.Length ? (long)Turned[kind] * box.Across[kind] : long.MaxValue
        );

    private void SumNeed(BoxContents box)
    {
        for (var kind = 0; kind < box.Count.Length; kind++)
        {
            Need += box.Count[kind] * Share(kind, box);
        }
    }
}
