namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The most weight that copies side by side in a row can have, for every length of row: a bounded knapsack with two sizes for a
/// copy that may turn, solved in whole numbers over a table of the lengths (Bellman 1957).</summary>
/// <param name="box">The rectangles and the box; rows run across it.</param>
/// <param name="extents">The extents that have a variable, ascending.</param>
/// <param name="variables">Number of variables of the program that the rows are for.</param>
/// <param name="most">A whole row may weigh this much; what is above is overfull.</param>
internal sealed class FullestRow(BoxContents box, int[] extents, int variables, long most)
{
    private readonly List<(int Kind, int Copies)> _choices = [];

    // For each choice and length of row, whether the choice is part of the fullest row: 1 unturned, 2 turned.
    private readonly List<byte[]> _marks = [];

    /// <summary>The most weight by length of row, from 0 to the box's width, for the weights that were tried last.</summary>
    public long[] Best { get; } = new long[box.Width + 1];

    /// <summary>What all tables cost so far, in entries written.</summary>
    public long Work { get; private set; }

    /// <summary>The fullest row under weights; null when it holds no more than it may.</summary>
    /// <param name="upright">Weight of a copy of each kind, unturned.</param>
    /// <param name="turned">Weight of a copy of each kind, turned.</param>
    /// <returns>For each extent's variable the number of copies in the row.</returns>
    public double[]? Find(int[] upright, int[] turned)
    {
        Array.Clear(Best);
        _choices.Clear();
        for (var kind = 0; kind < box.Count.Length; kind++)
        {
            AddKind(kind, upright[kind], turned[kind]);
        }

        return Best[box.Width] <= most ? null : ReadRow();
    }

    /// <summary>Allows the copies of one kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="upright">Its weight as it is kept.</param>
    /// <param name="turned">Its weight turned.</param>
    private void AddKind(int kind, int upright, int turned)
    {
        var (across, along, turns) = (box.Across[kind], box.Along[kind], box.Turns[kind]);

        // Copies that lie the same way are taken by ones, twos, fours; those that may turn one by one.
        int rest = Math.Min(box.Count[kind], box.Width / Math.Min(across, turns ? along : across));
        for (var copies = 1; rest > 0; rest -= copies, copies = Math.Min(rest, turns ? 1 : 2 * copies))
        {
            Work += box.Width;
            if (_marks.Count == _choices.Count)
            {
                _marks.Add(new byte[box.Width + 1]);
            }

            byte[] taken = _marks[_choices.Count];
            taken.AsSpan().Clear();
            _choices.Add((kind, copies));
            if (turns)
            {
                TakeEither(across, upright, along, turned, Best, taken);
            }
            else
            {
                Take(copies * across, (long)copies * upright, Best, taken);
            }
        }
    }

    /// <summary>Reads the fullest row back, from the last choice to the first.</summary>
    private double[] ReadRow()
    {
        var row = new double[variables];
        int free = box.Width;
        for (int index = _choices.Count - 1; index >= 0; index--)
        {
            var ((kind, copies), taken) = (_choices[index], _marks[index]);
            if (taken[free] != 0)
            {
                int e = taken[free] == 1 ? box.Across[kind] : box.Along[kind];
                row[Array.BinarySearch(extents, e)] += copies;
                free -= copies * e;
            }
        }

        return row;
    }

    // Smaller entries are still those without these copies, for the row is filled from its far end down.
    /// <remarks>One choice of some copies, which is taken or left.</remarks>
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

    /// <summary>One copy that may turn: taken upright, taken turned, or left.</summary>
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
}
