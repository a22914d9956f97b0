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
        var rowWeights = new AxisWeights(across, along, set.Turns, set.Count, width);
        var columnWeights = new AxisWeights(along, across, set.Turns, set.Count, height);
        if (rowWeights.Need > rowWeights.Best[width] * height || columnWeights.Need > columnWeights.Best[height] * width)
        {
            relaxed = true;
            return BoxOutcome.Impossible;
        }

        var upright = new BoxSearch(across, along, set.Turns, set.Count, width, height, rowWeights, columnWeights, budget, seenLog);
        var sideways = new BoxSearch(along, across, set.Turns, set.Count, height, width, columnWeights, rowWeights, budget, seenLog);
        long end = budget.Spent + steps;
        for (long slice = Math.Max(steps / 32, 256); budget.Spent < end; slice *= 2)
        {
            foreach (var search in new[] { upright, sideways })
            {
                var outcome = search.Run(Math.Min(slice, end - budget.Spent));
                if (outcome == BoxOutcome.Found)
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
