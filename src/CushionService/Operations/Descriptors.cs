using System.Globalization;

namespace CushionService.Operations;

/// <summary>How many connections the process may have open: as many as the system's limit of descriptors leaves room for. At
/// that limit a server can neither accept nor read its own files, and ends.</summary>
internal static class Descriptors
{
    /// <summary>The least limit of the system with which the service can start: a library takes two descriptors, some 160 are open when
    /// it listens, and the rest of its own with a few connections need what is left.</summary>
    public const long Least = 512;

    // For what is opened later: libraries that the first document or token needs, files, timers, telemetry.
    private const long Later = 128;

    // For each address. With fewer, a health check may find no room.
    private const long Fewest = 8;

    // Beyond this memory is the limit, and not descriptors.
    private const long Most = 10_000;

    /// <summary>Why the service cannot start; null when the system's limit allows it.</summary>
    public static string? Shortage => Limit("/proc/self/limits") is { } limit and < Least ? TooFew(limit) : null;

    /// <summary>The connections of each address that the service listens on.</summary>
    /// <param name="addresses">How many addresses there are; the server limits each by itself.</param>
    /// <exception cref="InvalidOperationException">There is no room for them.</exception>
    public static long ConnectionsFor(int addresses) => ConnectionsFor(addresses, Limit("/proc/self/limits"), Open("/proc/self/fd"));

    /// <summary>The same for a limit of descriptors.</summary>
    /// <param name="addresses">How many addresses there are.</param>
    /// <param name="limit">The limit; null for none.</param>
    /// <param name="open">How many descriptors the process has open for itself.</param>
    public static long ConnectionsFor(int addresses, long? limit, long open)
    {
        long left = ((limit ?? long.MaxValue) - open - Later) / Math.Max(1, addresses);
        return left >= Fewest ? Math.Min(Most, left) : throw new InvalidOperationException(TooFew(limit ?? 0));
    }

    private static string TooFew(long limit) =>
        $"The process may have {limit} files open, which is not enough for the service and its connections: set ulimit -n to 1024 or more.";

    private static long Open(string folder) => Directory.Exists(folder) ? Directory.EnumerateFileSystemEntries(folder).LongCount() : 0;

    // Linux writes it as "Max open files  1024  4096  files", the soft limit first; the runtime raises it to the hard one at
    // its start.
    private static long? Limit(string file)
    {
        const string Name = "Max open files";
        string? line = File.Exists(file)
            ? File.ReadLines(file).FirstOrDefault(line => line.StartsWith(Name, StringComparison.Ordinal))
            : null;
        string? soft = line?[Name.Length..].Split(' ', StringSplitOptions.RemoveEmptyEntries)[0];
        return long.TryParse(soft, NumberStyles.None, CultureInfo.InvariantCulture, out long limit) ? limit : null;
    }
}
