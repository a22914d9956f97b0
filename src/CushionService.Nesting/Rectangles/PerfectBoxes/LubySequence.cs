namespace CushionService.Nesting.Rectangles.PerfectBoxes;

/// <summary>The lengths of restarts (Luby, Sinclair and Zuckerman, "Optimal speedup of Las Vegas algorithms", 1993): within a logarithm
/// of the best sequence, whatever the chances of a run are.</summary>
internal static class LubySequence
{
    /// <summary>The i-th number, from 1, of 1, 1, 2, 1, 1, 2, 4, ...</summary>
    /// <param name="i">From 1.</param>
    /// <returns>A power of two, 1 at least.</returns>
    public static long At(int i)
    {
        int power = 1;
        while ((1 << power) - 1 < i)
        {
            power++;
        }

        return i == (1 << power) - 1 ? 1L << (power - 1) : At(i - (1 << (power - 1)) + 1);
    }
}
