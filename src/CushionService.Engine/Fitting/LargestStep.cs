namespace CushionService.Engine.Fitting;

/// <summary>Finds the largest of a row of sizes that fits, each a step larger than the one before.</summary>
public static class LargestStep
{
    /// <summary>The largest size that fits and the next that does not.</summary>
    /// <param name="start">Where to begin, at least 1.</param>
    /// <param name="fits">A quick test, taken to be monotone: above a size that does not fit, none does.</param>
    /// <param name="decide">The same test at full effort, which decides at the boundary.</param>
    /// <returns>The largest size, in steps, with how the next was decided; null when not even one step fits.</returns>
    /// <remarks>Doubles the stride until one fits and one does not, then bisects. At the boundary the full effort has the last word: while
    /// it finds room for one step more, that is taken.</remarks>
    public static (int Steps, FitVerdict Next)? Find(int start, Func<int, bool> fits, Func<int, FitVerdict> decide)
    {
        // Low is the largest size known to fit, 0 for none; high is one that does not.
        (int low, int high) = (0, start);
        if (fits(start))
        {
            (low, high) = (start, start + 1);
            for (int stride = 2; fits(high); stride *= 2)
            {
                (low, high) = (high, high + stride);
            }
        }
        else
        {
            for (int stride = 1; high > 1 && low == 0; stride *= 2)
            {
                int at = Math.Max(high - stride, 1);
                (low, high) = fits(at) ? (at, high) : (0, at);
            }
        }

        while (low > 0 && high - low > 1)
        {
            int middle = low + (high - low) / 2;
            (low, high) = fits(middle) ? (middle, high) : (low, middle);
        }

        FitVerdict next = decide(low + 1);
        while (next == FitVerdict.Fits)
        {
            next = decide(++low + 1);
        }

        return low == 0 ? null : (low, next);
    }
}
