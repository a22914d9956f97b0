using System.Runtime.ExceptionServices;

namespace CushionService.Nesting.Search;

/// <summary>Runs two pieces of work at once: one here, one on a thread that ends with it.</summary>
internal static class SideThread
{
    /// <summary>Returns when both have ended; throws what either threw, the first one's before the second's.</summary>
    /// <param name="here">Runs on the caller's thread.</param>
    /// <param name="aside">Runs on the other; it shares nothing with the first that either writes
    /// to.</param>
    public static void RunBoth(Action here, Action aside)
    {
        ExceptionDispatchInfo? failure = null;
        var thread = new Thread(() =>
        {
            try
            {
                aside();
            }
#pragma warning disable CA1031 // Whatever it is, it is thrown again where the caller waits.
            catch (Exception exception)
#pragma warning restore CA1031
            {
                failure = ExceptionDispatchInfo.Capture(exception);
            }
        });
        thread.Start();
        try
        {
            here();
        }
        finally
        {
            thread.Join();
        }

        failure?.Throw();
    }
}
