namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Asks the exact search whether all copies fit the strip up to a length, along the strip and across it.</summary>
internal sealed class BoxProblem
{
    private const int GreatestGrid = 4096;

    public static BoxOutcome Decide(RectangleSet set, long length, long steps, StepBudget budget, long[] x, long[] y, bool[] turned, int seenLog, out bool relaxed)
    {
        relaxed = false;
        long unitX = 0;
        long unitY = 0;
        bool any = false;
        for (var kind = 0; kind < set.Kinds; kind++)
        {
            unitX = Gcd(unitX, set.Across[kind]);
            unitY = Gcd(unitY, set.Along[kind]);
            any |= set.Turns[kind];
        }

        if (any)
        {
            unitX = unitY = Gcd(unitX, unitY);
        }

        if (set.Width / unitX > GreatestGrid || length / unitY > GreatestGrid)
        {
            return BoxOutcome.Unknown;
        }

        int width = (int)(set.Width / unitX);
        int height = (int)(length / unitY);
        int[] across = [.. set.Across.Select(extent => (int)(extent / unitX))];
        int[] along = [.. set.Along.Select(extent => (int)(extent / unitY))];
        for (var kind = 0; kind < set.Kinds; kind++)
        {
            bool upright0 = across[kind] <= width && along[kind] <= height;
            bool turned0 = set.Turns[kind] && along[kind] <= width && across[kind] <= height;
            if (!upright0 && !turned0)
            {
                relaxed = true;
                return BoxOutcome.Impossible;
            }
        }

        var rowWeights = new AxisWeights(across, along, set.Turns, set.Count, width);
        var columnWeights = new AxisWeights(along, across, set.Turns, set.Count, height);
        if (rowWeights.Need > rowWeights.Best[width] * height || columnWeights.Need > columnWeights.Best[height] * width)
        {
            relaxed = true;
            return BoxOutcome.Impossible;
        }

        long end = budget.Spent + steps;
        var subsets = new List<int[]>();
        for (var rule = 0; rule < 3; rule++)
        {
            int[] kinds = [.. Enumerable.Range(0, set.Kinds)];
            Array.Sort(
                kinds.Select(kind => -(rule == 0 ? (long)across[kind] * along[kind] : rule == 1 ? Math.Max(across[kind], along[kind]) : Math.Min(across[kind], along[kind]))).ToArray(),
                kinds);
            for (var taken = 1; taken < set.Kinds; taken++)
            {
                Propose(kinds[..taken]);
            }
        }

        for (var dropped = 0; dropped < set.Kinds && set.Kinds <= 16; dropped++)
        {
            Propose([.. Enumerable.Range(0, set.Kinds).Where(kind => kind != dropped)]);
        }

        for (long share = steps / 2000 + 100; share <= steps / 12; share *= 6)
        {
            for (var index = subsets.Count - 1; index >= 0; index--)
            {
                var outcome = Some(subsets[index], Math.Min(share, end - budget.Spent));
                if (outcome == BoxOutcome.Impossible)
                {
                    return BoxOutcome.Impossible;
                }

                if (outcome == BoxOutcome.Found || budget.Spent > end - steps / 4)
                {
                    subsets.RemoveAt(index);
                }
            }

            if (Some([.. Enumerable.Range(0, set.Kinds)], Math.Min(share, end - budget.Spent)) is var whole && whole != BoxOutcome.Unknown)
            {
                return whole;
            }
        }

        void Propose(int[] kinds)
        {
            Array.Sort(kinds);
            if (!subsets.Any(other => other.SequenceEqual(kinds)))
            {
                subsets.Add(kinds);
            }
        }

        return Some([.. Enumerable.Range(0, set.Kinds)], end - budget.Spent);

        // All copies of some kinds, laid along the box and across it in turns.
        BoxOutcome Some(ReadOnlySpan<int> kinds, long share)
        {
            int[] a = new int[kinds.Length], b = new int[kinds.Length], count = new int[kinds.Length];
            var turns = new bool[kinds.Length];
            for (var index = 0; index < kinds.Length; index++)
            {
                int kind = kinds[index];
                (a[index], b[index], turns[index], count[index]) = (across[kind], along[kind], set.Turns[kind], set.Count[kind]);
            }

            bool all = kinds.Length == set.Kinds;
            var rows = all ? rowWeights : new AxisWeights(a, b, turns, count, width);
            var columns = all ? columnWeights : new AxisWeights(b, a, turns, count, height);
            int log = all ? seenLog : 12;
            var upright = new BoxSearch(a, b, turns, count, width, height, rows, columns, budget, log);
            var sideways = new BoxSearch(b, a, turns, count, height, width, columns, rows, budget, log);
            long stop = budget.Spent + share;
            for (long slice = Math.Max(share / 32, 256); budget.Spent < stop; slice *= 2)
            {
                foreach (var search in new[] { upright, sideways })
                {
                    var outcome = search.Run(Math.Min(slice, stop - budget.Spent));
                    if (outcome == BoxOutcome.Found && all)
                    {
                        Read(set, search, search == sideways, unitX, unitY, x, y, turned);
                    }

                    if (outcome != BoxOutcome.Unknown)
                    {
                        return outcome;
                    }
                }
            }

            return BoxOutcome.Unknown;
        }
    }

    private static void Read(RectangleSet set, BoxSearch search, bool sideways, long unitX, long unitY, long[] x, long[] y, bool[] turned)
    {
        var next = new int[set.Kinds];
        for (int copy = set.Copies - 1; copy >= 0; copy--)
        {
            next[set.KindOf[copy]] = copy;
        }

        for (var index = 0; index < search.Laid; index++)
        {
            var laid = search[index];
            int copy = next[laid.Kind]++;
            (x[copy], y[copy]) = sideways ? (laid.Y * unitX, laid.X * unitY) : (laid.X * unitX, laid.Y * unitY);
            turned[copy] = laid.Turned;
        }
    }

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
}
