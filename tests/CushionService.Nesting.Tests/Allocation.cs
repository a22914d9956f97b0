namespace CushionService.Nesting.Tests;

/// <summary>Counts what code allocates on its thread.</summary>
internal static class Allocation
{
    private const int Tries = 3;

    /// <summary>The least bytes of a few tries: the runtime allocates now and then for itself, as when it compiles anew, but not every
    /// time.</summary>
    public static long Least(Action work) =>
        Enumerable
            .Range(0, Tries)
            .Min(_ =>
            {
                long before = GC.GetAllocatedBytesForCurrentThread();
                work();
                return GC.GetAllocatedBytesForCurrentThread() - before;
            });
}
