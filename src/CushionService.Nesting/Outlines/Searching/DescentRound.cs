using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Searching;

/// <summary>A round of equal work for several descents, on one thread or on two.</summary>
internal static class DescentRound
{
    /// <summary>The first that cannot be beaten, or their number. It cuts short those behind it alone, so that what those before it do, and
    /// the steps that are counted, do not depend on which thread is faster.</summary>
    /// <param name="descents">Those that are still going.</param>
    /// <param name="exploreUntil">Steps after which each compresses.</param>
    /// <param name="until">Steps after which each stops.</param>
    /// <param name="threads">1 or 2.</param>
    public static int Run(ReadOnlyMemory<Descent> descents, long exploreUntil, long until, int threads)
    {
        var lowest = descents.Length;
        if (threads == 1 || descents.Length == 1)
        {
            RunEvery(0, 1);
        }
        else
        {
            SideThread.RunBoth(() => RunEvery(0, 2), () => RunEvery(1, 2));
        }

        return lowest;

        void RunEvery(int first, int step)
        {
            for (var number = first; number < descents.Length && number < Volatile.Read(ref lowest); number += step)
            {
                var here = number;
                var descent = descents.Span[number];
                descent.Explore(exploreUntil, () => here < Volatile.Read(ref lowest));
                descent.Compress(until, () => here < Volatile.Read(ref lowest));
                for (var known = Volatile.Read(ref lowest); descent.IsLowest && number < known; known = Volatile.Read(ref lowest))
                {
                    Interlocked.CompareExchange(ref lowest, number, known);
                }
            }
        }
    }
}
