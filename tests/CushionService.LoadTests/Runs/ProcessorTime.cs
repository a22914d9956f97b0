using System.Diagnostics;
using System.Runtime.InteropServices;

namespace CushionService.LoadTests.Runs;

/// <summary>Time that a processor has worked: what else runs on the machine does not count, as it would with a clock.</summary>
internal static partial class ProcessorTime
{
    // Linux's number of the clock that counts for the calling thread alone.
    private const int ThreadClock = 3;

    /// <summary>Of the calling thread. A search on two threads does half of its work on it, so that on idle processors this is how long a
    /// caller waits.</summary>
    public static TimeSpan OfThread
    {
        get
        {
            if (!OperatingSystem.IsLinux())
            {
                return OfProcess;
            }

            return GetTime(ThreadClock, out Moment moment) == 0
                ? TimeSpan.FromSeconds(moment.Seconds) + TimeSpan.FromMicroseconds(moment.Nanoseconds / 1000)
                : throw new InvalidOperationException("The thread's processor time cannot be read.");
        }
    }

    /// <summary>Of all threads of this process, the compiler's and the collector's too.</summary>
    public static TimeSpan OfProcess => Process.GetCurrentProcess().TotalProcessorTime;

    [LibraryImport("libc", EntryPoint = "clock_gettime")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int GetTime(int clock, out Moment moment);

    private readonly struct Moment
    {
        public readonly long Seconds;
        public readonly long Nanoseconds;
    }
}
