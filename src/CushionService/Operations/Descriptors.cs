using System.Globalization;

namespace CushionService.Operations;

/// <summary>How many connections the process may have open: as many as the system's limit of descriptors leaves room for. At
/// that limit a server can neither accept nor read its own files, and ends.</summary>
internal static class Descriptors
{
    // For libraries, logs, timers, telemetry and price books; some 150 were open under load.
    private const long Own = 256;

    // Beyond this memory is the limit, and not descriptors.
    private const long Most = 10_000;

    /// <summary>The connections of each address that the service listens on.</summary>
    /// <param name="addresses">How many addresses there are; the server limits each by itself.</param>
    public static long ConnectionsFor(int addresses) => ConnectionsFor(addresses, Limit("/proc/self/limits"));

    /// <summary>The same for a limit of descriptors.</summary>
    /// <param name="addresses">How many addresses there are.</param>
    /// <param name="limit">The limit; null for none.</param>
    public static long ConnectionsFor(int addresses, long? limit) =>
        Math.Max(16, Math.Min(Most, ((limit ?? long.MaxValue) - Own) / Math.Max(1, addresses)));

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
